'use client'
import { type ChangeEvent, useState } from 'react'
import { photoSizes } from '@/lib/visit/photo'
import { described, Field } from '../field'

type Props = {
	readonly name: string
	readonly label: string
	readonly most: number
	readonly error?: string | undefined
}

const small = 900_000

/** A photo as large as it will be kept: a phone in a poor network sends a tenth of it. As it was, where the browser cannot. */
async function shrunk(file: File): Promise<File> {
	const picture = await createImageBitmap(file).catch(() => null)
	if (picture === null) return file
	const scale = Math.min(1, photoSizes.large / Math.max(picture.width, picture.height))
	if (scale === 1 && file.size < small) return file
	const canvas = document.createElement('canvas')
	canvas.width = Math.max(1, Math.round(picture.width * scale))
	canvas.height = Math.max(1, Math.round(picture.height * scale))
	const pen = canvas.getContext('2d')
	if (pen === null) return file
	pen.fillStyle = '#ffffff'
	pen.fillRect(0, 0, canvas.width, canvas.height)
	pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
	const made = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.85))
	return made === null ? file : new File([made], file.name, { type: 'image/jpeg' })
}

/** Asks for JPEG, PNG or WebP, so that a phone hands over a HEIC as a JPEG; too many are said before anything is sent. */
export function PhotoField({ name, label, most, error }: Props) {
	const [says, say] = useState('')
	const common = { name, error, hint: `JPEG, PNG or WebP, up to ${most} at once.` }
	const choose = async ({ currentTarget: box }: ChangeEvent<HTMLInputElement>) => {
		const files = [...(box.files ?? [])]
		const many = files.length > most ? `These are ${files.length} photos. Choose up to ${most}.` : ''
		box.setCustomValidity(many)
		say(many)
		if (many !== '') return
		const ready = new DataTransfer()
		for (const file of files) ready.items.add(await shrunk(file))
		const isSame = box.files?.length === files.length && files.every((file, index) => box.files?.[index] === file)
		if (isSame) box.files = ready.files
	}
	return (
		<Field label={label} {...common}>
			<input
				type="file"
				multiple
				accept="image/jpeg,image/png,image/webp"
				className="box"
				onChange={(event) => void choose(event)}
				{...described(common)}
			/>
			<p role="status" className="font-semibold text-warn">
				{says}
			</p>
		</Field>
	)
}
