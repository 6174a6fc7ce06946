'use client'
import { type ChangeEvent, useState } from 'react'
import { described, Field } from '../field'
import { shrunk } from './shrunk'

type Props = {
	readonly name: string
	readonly label: string
	readonly most: number
	readonly error?: string | undefined
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
