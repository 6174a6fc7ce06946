import type { MailedProposal } from '@/db/outbox/mail-facts'
import { daySpan, longDay } from '@/lib/format/day'
import { moneyFormat } from '@/lib/format/money'
import { list } from '@/lib/format/words'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { dueInWords } from '@/lib/proposal/offer/due-words'
import type { Offer } from '@/lib/proposal/offer/offer'
import { seasonName } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import type { Letter } from './letter'

export type To = { readonly name: string; readonly studio: string }
type Filled = Omit<Letter, 'action' | 'greeting' | 'studio' | 'small'> & { readonly label: string }

/** What a mail says, by what it reports; where it leads is the sender's to know. */
export function finish({ label, ...filled }: Filled, { name, studio }: To, href: string, small: string): Letter {
	return { ...filled, greeting: `Dear ${name},`, studio, small, action: { label, href } }
}

export function signInLetter(code: string): Filled {
	return {
		subject: 'Your link to sign in',
		paragraphs: [
			'You asked for a link to sign in. It works once, for ten minutes. Or type this code in the window where you asked:',
		],
		code: `${code.slice(0, 4)} ${code.slice(4)}`,
		label: 'Sign in',
	}
}

function prices({ options }: Offer): string {
	const format = moneyFormat(options[0]?.prices.currency ?? 'USD')
	const totals = options.map(({ prices: of }) => quote(of, everything).totalCents)
	const least = cents(Math.min(...totals))
	return totals.length === 1 ? format(least) : `from ${format(least)}`
}

const strip = ({ options: [first, ...more] }: Offer) =>
	first !== undefined && more.length === 0 ? { strip: first.palette.map(({ name, hex }) => ({ name, hex })) } : {}

const dates = ({ answerBy, window }: Offer) =>
	[
		['Answer by', longDay(answerBy)],
		['Goes in', daySpan(window.from, window.to)],
	] as const

export function publishedLetter({ offer, mayApprove, number }: MailedProposal): Filled {
	const season = seasonName(offer.season)
	const palettes = list(
		offer.options.map(({ name }) => `“${name}”`),
		'or',
	)
	const first =
		number === 1 ? `Your design for ${season} is ready to look at` : `Your design for ${season} has been revised`
	const more = mayApprove ? '' : ' Somebody else at your place gives the answer; you are welcome to look.'
	return {
		subject: number === 1 ? `Your design for ${season}` : `Your design for ${season}, revised`,
		paragraphs: [`${first}: ${offer.title}, in ${palettes}.${more}`],
		...strip(offer),
		rows: [...dates(offer), [offer.options.length === 1 ? 'Total' : 'Totals', prices(offer)]],
		label: 'See the design',
	}
}

export function reminderLetter({ offer }: MailedProposal): Filled {
	const season = seasonName(offer.season)
	return {
		subject: `We still need your answer for ${season}`,
		paragraphs: [
			`Your design for ${season}, ${offer.title}, is waiting for your answer, so that we can order in time.`,
		],
		...strip(offer),
		rows: [...dates(offer), [offer.options.length === 1 ? 'Total' : 'Totals', prices(offer)]],
		label: 'See the design and answer',
	}
}

/** The rows of an approval: the same in the client's receipt and in the studio's notice. */
function approvalRows({ offer, answer }: MailedProposal): (readonly [string, string])[] {
	const option = offer.options.find(({ key }) => key === answer?.option)
	if (answer === undefined || option === undefined) return []
	const total = quote(option.prices, {
		extras: answer.extras,
		leftOut: offer.containers.map(({ id }) => id).filter((id) => answer.leftOut.includes(id)),
	})
	const format = moneyFormat(total.currency)
	const extras = offer.extras.filter(({ key }) => answer.extras.includes(key)).map(({ name }) => name)
	const out = offer.containers.filter(({ id }) => answer.leftOut.includes(id)).map(({ name }) => name)
	const order = answer.words?.purchaseOrder ?? ''
	return [
		['Reference', answer.reference],
		['Palette', option.name],
		...(extras.length > 0 ? ([['Extras', list(extras)]] as const) : []),
		...(out.length > 0 ? ([['Left out', list(out)]] as const) : []),
		...(order === '' ? [] : ([['Purchase order', order]] as const)),
		['Total', format(total.totalCents)],
		['To be paid', dueInWords(total.due, format)],
		['Goes in', daySpan(offer.window.from, offer.window.to)],
	]
}

export function approvedLetter(of: MailedProposal): Filled {
	return {
		subject: `Approved: your design for ${seasonName(of.offer.season)}, ${of.answer?.reference ?? ''}`,
		paragraphs: ['Thank you. This is your receipt for what you approved. We order now and write again before we come.'],
		rows: approvalRows(of),
		label: 'See what you approved',
	}
}

export function approvalReceivedLetter(of: MailedProposal): Filled {
	const by = of.answer?.words?.name ?? 'A contact'
	return {
		subject: `${of.offer.client} approved`,
		paragraphs: [`${by} approved “${of.offer.title}” for ${of.offer.client}.`],
		rows: approvalRows(of),
		label: 'Open the proposal',
	}
}

export function changeLetter({ offer, answer }: MailedProposal): Filled {
	const by = answer?.words?.name ?? 'A contact'
	const notes = answer?.words?.notes ?? []
	return {
		subject: `${offer.client} asks for a change`,
		paragraphs: [
			`${by} asks for a change to “${offer.title}”:`,
			...notes.map(({ about, words }) => `${about}: ${words}`),
		],
		label: 'Revise the design',
	}
}

export function skippedLetter({ offer, answer }: MailedProposal): Filled {
	const why = answer?.words?.notes[0]?.words
	return {
		subject: `${offer.client} skips ${seasonName(offer.season)}`,
		paragraphs: [`${offer.client} skips ${seasonName(offer.season)}.`, ...(why === undefined ? [] : [`“${why}”`])],
		label: 'Open the proposal',
	}
}
