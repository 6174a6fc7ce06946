import type { MailedProposal } from '@/db/outbox/mail-facts'
import { daySpan, longDay } from '@/lib/format/day'
import { list } from '@/lib/format/words'
import { everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { answeredBy } from '@/lib/proposal/offer/answered-by'
import { remainsInWords } from '@/lib/proposal/offer/due-words'
import type { Offer } from '@/lib/proposal/offer/offer'
import { offerMoney } from '@/lib/proposal/offer/price-view'
import { receipt } from '@/lib/proposal/offer/receipt'
import { seasonName } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { dayOf } from '@/lib/units/day'
import { chosenDrawings, offeredDrawings } from './drawings'
import type { Letter } from './letter'

export type To = { readonly name: string; readonly studio: string }
export type Filled = Omit<Letter, 'action' | 'greeting' | 'studio' | 'small'> & { readonly label: string }

/** What a mail says, by what it reports; where it leads is the sender's to know. */
export function finish({ label, ...filled }: Filled, { name, studio }: To, href: string, small: string): Letter {
	return { ...filled, greeting: `Dear ${name},`, studio, small, action: { label, href } }
}

function prices(offer: Offer): string {
	const format = offerMoney(offer)
	const totals = offer.options.map(({ prices: of }) => quote(of, everything).totalCents)
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
		drawings: offeredDrawings(offer),
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
		drawings: offeredDrawings(offer),
		...strip(offer),
		rows: [...dates(offer), [offer.options.length === 1 ? 'Total' : 'Totals', prices(offer)]],
		label: 'See the design and answer',
	}
}

/** A receipt, the same for the client and in the studio's notice. */
export function approvalRows({
	offer,
	answer,
	timeZone,
}: MailedProposal): Pick<Letter, 'drawings' | 'rows' | 'prices'> {
	const of =
		answer &&
		receipt(offer, {
			...answer,
			on: dayOf(answer.at, timeZone),
			by: answeredBy(answer.word, answer.words),
			purchaseOrder: answer.words?.purchaseOrder ?? '',
		})
	if (of === undefined) return {}
	const { rows, taxes, total, due, notes } = of.price
	return {
		drawings: answer && chosenDrawings(offer, answer),
		rows: of.rows.map(({ label, value }) => [label, value]),
		prices: [
			...[...rows, ...taxes].map(({ label, amount }) => [label, amount] as const),
			['Total', total],
			['To be paid', due],
			...notes.map((note) => ['Note', note] as const),
		],
	}
}

export function approvedLetter(of: MailedProposal): Filled {
	const by = of.answer?.words?.name ?? 'A contact'
	const thanks = of.isOwn
		? 'Thank you. This is your receipt for what you approved.'
		: `${by} approved this design. This is your copy of the receipt.`
	return {
		subject: `Approved: your design for ${seasonName(of.offer.season)}, ${of.answer?.reference ?? ''}`,
		paragraphs: [`${thanks} We order now and write again before we come.`],
		...approvalRows(of),
		label: of.isOwn ? 'See what you approved' : 'See what was approved',
	}
}

export function approvalReceivedLetter(of: MailedProposal): Filled {
	const { answer, offer } = of
	const by = answer?.words?.name ?? 'A contact'
	const approved =
		answer?.word === 'studio'
			? `“${offer.title}” was approved for ${offer.client} ${answeredBy('studio', answer.words)}.`
			: `${by} approved “${offer.title}” for ${offer.client}.`
	return {
		subject: `${offer.client} approved`,
		paragraphs: [approved],
		...approvalRows(of),
		label: 'Open the proposal',
	}
}

export function changeLetter({ offer, answer }: MailedProposal): Filled {
	const by = answer?.words?.name ?? 'A contact'
	const notes = answer?.words?.notes ?? []
	return {
		subject: `${offer.client} asks for a change`,
		paragraphs: [
			answer?.word === 'studio'
				? `A change to “${offer.title}” was asked for ${answeredBy('studio', answer.words)}:`
				: `${by} asks for a change to “${offer.title}”:`,
			...notes.map(({ about, words }) => `${about}: ${words}`),
		],
		label: 'Revise the design',
	}
}

export function skippedLetter({ offer, answer }: MailedProposal): Filled {
	const why = answer?.words?.notes[0]?.words
	return {
		subject: `${offer.client} skips ${seasonName(offer.season)}`,
		paragraphs: [
			`${offer.client} skips ${seasonName(offer.season)}${answer?.word === 'studio' ? `, ${answeredBy('studio', answer.words)}` : ''}.`,
			...(why === undefined ? [] : [`“${why}”`]),
		],
		label: 'Open the proposal',
	}
}

const under = (answer: MailedProposal['answer']) => (answer === undefined ? '' : `, reference ${answer.reference},`)

export function openedAgainLetter({ offer, answer }: MailedProposal): Filled {
	const season = seasonName(offer.season)
	return {
		subject: `We are revising your design for ${season}`,
		paragraphs: [
			`We have opened your design for ${season}, ${offer.title}, once more and are revising it. Your approval${under(answer)} stays in our record, but what it approved is no longer what goes in.`,
			'We write to you when the new revision is there to answer. There is nothing to do until then.',
		],
		label: 'See where it stands',
	}
}

export function takenBackLetter({ offer }: MailedProposal): Filled {
	const season = seasonName(offer.season)
	return {
		subject: `Taken back: your design for ${season}`,
		paragraphs: [`We have taken back your design for ${season}, ${offer.title}. There is nothing to answer.`],
		label: 'See where it stands',
	}
}

export function cancelledLetter({ offer, answer, remains }: MailedProposal): Filled {
	const season = seasonName(offer.season)
	const due = remains === null ? [] : [remainsInWords(remains, offerMoney(offer))]
	return {
		subject: `Cancelled: your design for ${season}`,
		paragraphs: [
			`Your design for ${season}, ${offer.title}, is cancelled: nothing of it goes in. Your approval${under(answer)} stays in our record.`,
			...due,
		],
		label: 'See where it stands',
	}
}
