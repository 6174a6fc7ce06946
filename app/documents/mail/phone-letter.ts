import type { MailedProposal } from '@/db/outbox/mail-facts'
import type { GivenAnswer } from '@/db/proposals/read-offer'
import { fullDay } from '@/lib/format/day'
import { seasonName } from '@/lib/season/season'
import { dayOf } from '@/lib/units/day'
import { approvalRows, type Filled } from './letters'

const heads: Record<GivenAnswer['kind'], { readonly subject: string; readonly says: string }> = {
	approval: { subject: 'Approved by phone', says: 'approves this design' },
	'change asked for': { subject: 'A change asked for by phone', says: 'asks for a change to this design' },
	skip: { subject: 'Skipped by phone', says: 'skips this season' },
}

const next: Record<GivenAnswer['kind'], string> = {
	approval: 'We order now and write again before we come.',
	'change asked for': 'We revise the design and write when the new revision is there to answer.',
	skip: 'Nothing goes in and nothing is due for this season.',
}

/** What the client has in hand of an answer that the studio took down on their word. @throws when there is no answer */
export function phoneLetter(of: MailedProposal): Filled {
	const { answer, offer, timeZone } = of
	if (answer === undefined) throw new Error('phoneLetter: no answer was taken down')
	const { kind, words, at, reference } = answer
	const { subject, says } = heads[kind]
	const season = seasonName(offer.season)
	const on = fullDay(dayOf(at, timeZone))
	return {
		subject: `${subject}: your design for ${season}, ${reference}`,
		paragraphs: [
			`On ${on} ${words?.name ?? 'the studio'} wrote down, as ${words?.said ?? 'a contact'} said on the phone, that ${offer.client} ${says}: ${offer.title}.`,
			...(words?.notes ?? []).map(({ about, words: said }) =>
				about === 'whole' ? `“${said}”` : `${about}: “${said}”`,
			),
			`${next[kind]} It stands in our record as written down by us on your word, under reference ${reference}.`,
			'Is any of it wrong? Reply to this mail or ring us, and we put it right before anything is ordered on it.',
		],
		...approvalRows(of),
		label: 'See what was written down',
	}
}
