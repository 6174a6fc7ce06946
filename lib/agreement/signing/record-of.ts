import { fullDay } from '../../format/day'
import { bothClocks } from '../../format/moment'
import { quantity } from '../../format/words'
import type { Moment } from '../../units/day'
import type { Signature } from './signature'

export type RecordLine = { readonly of: string; readonly says: readonly string[] }
export type SignatureRecord = { readonly title: string; readonly lines: readonly RecordLine[] }

type Of<Is extends Signature['is']> = Extract<Signature, { is: Is }>
type Clock = (at: Moment) => string

const line = (of: string, ...says: string[]): RecordLine => ({ of, says })
const proofs = { link: 'by opening a link that was sent there', code: 'by typing a code that was sent there' } as const

const onScreen = (it: Of<'on a screen'>, clock: Clock): SignatureRecord => ({
	title: 'For the client, on a screen',
	lines: [
		line('Name, as typed', it.typedName),
		...(it.stroke === null ? [] : [line('Drawn by hand', quantity(it.stroke.length, 'line'))]),
		line('Meant by it', it.intent),
		line('Address, shown to be theirs', it.proven.address, proofs[it.proven.by], clock(it.proven.at)),
		line('Opened before', ...it.opened.map(({ as, at }) => `as a ${as}, ${clock(at)}`)),
		line('Electronic records', `agreed to, in version ${it.consent.version} of the words`, clock(it.consent.at)),
		line('Hash of those words', it.consent.hash),
		line('Signed', clock(it.signedAt)),
		line('From', `${it.sender}, with ${it.browser}`),
		line('In the record', `person ${it.person}`),
	],
})

const onPaper = (it: Of<'on paper'>, clock: Clock): SignatureRecord => ({
	title: 'For the client, on paper',
	lines: [
		line('Name on the paper', it.signer),
		line('Signed', fullDay(it.signedOn)),
		line('Hash of the picture of it', it.scan),
		line('Written down by the studio', clock(it.recordedAt)),
		line('In the record', `by person ${it.recordedBy}`),
	],
})

const byStudio = (it: Of<'by the studio'>, clock: Clock): SignatureRecord => ({
	title: 'For the studio, by issuing it',
	lines: [line('Name', it.name), line('Signed', clock(it.signedAt)), line('In the record', `person ${it.person}`)],
})

/** What is kept of a signature, in words, by both clocks: UTC and the studio's. */
export function recordOf(signature: Signature, timeZone: string): SignatureRecord {
	const clock: Clock = (at) => bothClocks(at, timeZone)
	switch (signature.is) {
		case 'on a screen':
			return onScreen(signature, clock)
		case 'on paper':
			return onPaper(signature, clock)
		case 'by the studio':
			return byStudio(signature, clock)
		default:
			return signature satisfies never
	}
}
