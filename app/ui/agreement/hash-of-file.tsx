'use client'
import { type ChangeEvent, useEffect, useState } from 'react'

const hex = (bytes: ArrayBuffer) =>
	Array.from(new Uint8Array(bytes), (byte) => byte.toString(16).padStart(2, '0')).join('')

/** Computes the hash of a file in this browser and puts it into the box `into`: the file itself goes nowhere. */
export function HashOfFile({ into }: { readonly into: string }) {
	const [isThere, setIsThere] = useState(false)
	const [name, setName] = useState('')
	useEffect(() => setIsThere('subtle' in crypto), [])
	const take = async ({ target }: ChangeEvent<HTMLInputElement>) => {
		const file = target.files?.[0]
		const box = document.getElementById(into)
		if (file === undefined || !(box instanceof HTMLTextAreaElement)) return
		box.value = hex(await crypto.subtle.digest('SHA-256', await file.arrayBuffer()))
		setName(file.name)
	}
	if (!isThere) return null
	return (
		<div className="mt-6">
			<label htmlFor="file" className="block font-semibold">
				The file
			</label>
			<p className="text-sm text-soft">Choose it, or drop it here. It stays with you: only its hash is compared.</p>
			<input
				id="file"
				type="file"
				accept="application/pdf"
				className="box mt-1.5"
				onChange={(event) => void take(event)}
			/>
			<p role="status" className="mt-1 wrap-anywhere">
				{name === '' ? '' : `The hash of ${name} stands below.`}
			</p>
		</div>
	)
}
