'use client'
import { Told } from './ui/told'

export default function Failed({ error }: { readonly error: Error & { readonly digest?: string } }) {
	return (
		<html lang="en">
			<body>
				<Told
					title="Something went wrong on our side"
					says={`Nothing was changed. Try again; if it stays, tell us the reference ${error.digest ?? 'none'}.`}
				/>
			</body>
		</html>
	)
}
