import type { MailedAgreement } from '@/db/outbox/mailed-agreement'
import { fullDay, longDay } from '@/lib/format/day'
import { momentWords } from '@/lib/format/moment'
import type { Hash } from '@/lib/record/hash'
import type { Rows } from './letter'
import type { Filled } from './letters'

/** The line of the record that stood last when it was signed. */
export type Head = { readonly seq: number; readonly head: Hash }

const when = ({ from, to }: MailedAgreement) => ['Holds', `${fullDay(from)} to ${fullDay(to)}`] as const
const years = ({ from, to }: MailedAgreement) => {
	const [first, last] = [from.slice(0, 4), to.slice(0, 4)]
	return first === last ? first : `${first}–${last.slice(2)}`
}
const toSign = (of: MailedAgreement): Rows => [
	when(of),
	...(of.signBy === null ? [] : [['Sign by', longDay(of.signBy)] as const]),
]

export function agreementIssuedLetter(of: MailedAgreement): Filled {
	const isNew = of.number === 1
	return {
		subject: isNew ? `Your agreement for ${years(of)}` : `Your agreement for ${years(of)}, changed`,
		paragraphs: [
			isNew
				? `The agreement for ${of.client} is ready to read and sign. We have signed it already.`
				: `We have changed the agreement for ${of.client}: it says first what is different. We have signed it already.`,
			'You can sign on a phone: read it, agree to have it on a screen, type your name. Rather paper? Answer this mail.',
		],
		rows: toSign(of),
		label: 'Read and sign',
	}
}

export function agreementReminderLetter(of: MailedAgreement): Filled {
	return {
		subject: `Your agreement for ${years(of)} waits for your name`,
		paragraphs: [
			`The agreement for ${of.client} still waits for your signature, so that we can plan your seasons in time.`,
		],
		rows: toSign(of),
		label: 'Read and sign',
	}
}

/** To both sides: what each may keep outside of our hands, so that nothing can be altered later without being seen. */
export function agreementSignedLetter(of: MailedAgreement, { seq, head }: Head): Filled {
	const { signed, isForStudio, client } = of
	const by = signed?.name ?? 'A contact'
	const said = isForStudio ? `${by} signed the agreement for ${client}.` : `The agreement for ${client} is signed.`
	return {
		subject: isForStudio ? `${client} signed` : `Signed: your agreement for ${years(of)}`,
		paragraphs: [
			said,
			'Keep this mail. The two long numbers below say exactly which text was signed and what our record held then: with them anybody can see later whether either was altered.',
		],
		rows: [
			['Signed by', by],
			...(signed === undefined ? [] : [['On', momentWords(signed.at, of.timeZone)] as const]),
			when(of),
			['Number', String(of.number)],
			['Text (SHA-256)', of.hash],
			[`Record, line ${seq}`, head],
		],
		label: isForStudio ? 'Open the agreement' : 'See the agreement',
	}
}

export function agreementDeclinedLetter({ client, declined }: MailedAgreement): Filled {
	return {
		subject: `${client} declines the agreement`,
		paragraphs: [
			`${declined?.name ?? 'A contact'} declines the agreement for ${client}:`,
			...(declined === undefined ? [] : [`“${declined.reason}”`]),
		],
		label: 'Open the agreement',
	}
}

export function agreementTakenBackLetter(of: MailedAgreement): Filled {
	return {
		subject: `Taken back: your agreement for ${years(of)}`,
		paragraphs: [`We have taken back the agreement for ${of.client}. There is nothing to sign.`],
		label: 'See where it stands',
	}
}

export function agreementEndedLetter(of: MailedAgreement): Filled {
	const until = of.holdsUntil ?? of.to
	return {
		subject: `Ended: your agreement for ${years(of)}`,
		paragraphs: [
			`The agreement for ${of.client} ends on ${fullDay(until)}. What falls due until then remains due; what is lent to you we fetch.`,
			'Is that not what was said? Answer this mail.',
		],
		label: 'See where it stands',
	}
}
