import { Alert } from '@/app/ui/alert'
import type { AgreementPage } from '@/lib/agreement/signing/page'
import { stands } from '@/lib/agreement/signing/stands'
import { isSigningRefusal, signingTold } from '@/lib/agreement/signing/told'
import { dayOf } from '@/lib/units/day'

/** Why the last step went no further, in a sentence; nothing for what we never say. */
export function Refused({ told }: { readonly told: string | undefined }) {
	return told !== undefined && isSigningRefusal(told) ? <Alert key={told}>{signingTold(told)}</Alert> : null
}

/** How the agreement stands. */
export function Stands({ page }: { readonly page: AgreementPage }) {
	const { document, state, signBy, signatures, timeZone } = page
	if (document === undefined) return null
	const client = signatures.find(({ side }) => side === 'client')
	const signed = client && { name: client.name ?? 'somebody who is erased', on: dayOf(client.at, timeZone) }
	return <p className="said mt-6 text-lg">{stands({ ...document, state, signBy, signed })}</p>
}
