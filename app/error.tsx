'use client'
import { Told } from './ui/told'

/** The reference leads to the line in the log; what went wrong inside is not told. */
export default function Failed({ error }: { readonly error: Error & { readonly digest?: string } }) {
	return (
		<Told
			title="Something went wrong on our side"
			says={`Nothing was changed. Try again; if it stays, tell us the reference ${error.digest ?? 'none'}.`}
		/>
	)
}
