import { type ChangeEvent, useEffect, useState } from 'react'
import { described, Field } from '@/app/ui/field'
import { shrunk } from '@/app/ui/visits/shrunk'

type Props = {
	readonly photo: Blob | null
	readonly error: string | undefined
	readonly onPhoto: (photo: Blob | null) => void
}

function asAddress(photo: Blob): Promise<string> {
	return new Promise((resolve, reject) => {
		const reader = new FileReader()
		reader.onload = () => resolve(String(reader.result))
		reader.onerror = () => reject(reader.error)
		reader.readAsDataURL(photo)
	})
}

/** The front as it is found: asked for as JPEG, so that a phone hands over no HEIC, and by the camera where there is one. */
export function PhotoBox({ photo, error, onPhoto }: Props) {
	const [shown, setShown] = useState('')
	useEffect(() => {
		let isOver = false
		setShown('')
		if (photo !== null)
			asAddress(photo).then(
				(address) => isOver || setShown(address),
				() => undefined,
			)
		return () => {
			isOver = true
		}
	}, [photo])
	const take = async ({ currentTarget: { files } }: ChangeEvent<HTMLInputElement>) => {
		const [file] = files ?? []
		onPhoto(file === undefined ? null : await shrunk(file))
	}
	const common = {
		name: 'photo',
		error,
		hint: 'The wall, the door and what is before them: its colours become the place’s.',
	}
	return (
		<Field label="Photo of the front" {...common}>
			<input
				type="file"
				accept="image/jpeg"
				capture="environment"
				className="box py-3"
				onChange={(event) => void take(event)}
				{...described(common)}
			/>
			{shown !== '' && (
				<div className="mt-2 flex items-center gap-4">
					<img src={shown} alt="The photo, as it will be sent" className="photo max-h-40" />
					<button type="button" className="does" onClick={() => onPhoto(null)}>
						Take it out
					</button>
				</div>
			)}
		</Field>
	)
}
