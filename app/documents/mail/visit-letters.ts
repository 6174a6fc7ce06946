import type { MailedVisit } from '@/db/outbox/mailed-visit'
import { shortDay } from '@/lib/format/day'
import { capital, numberWord } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import { visitWords } from '@/lib/visit/words'
import type { Rows } from './letter'
import type { Filled } from './letters'

const photos = (count: number) => `${numberWord(count)} photo${count === 1 ? '' : 's'}`

const where = ({ placeName, season }: MailedVisit): Rows => [
	['Place', placeName === '' ? 'All places' : placeName],
	['Season', capital(seasonName(season))],
]

/** To the designers. */
export function wrongLetter(of: MailedVisit): Filled {
	const { clientName, reported, reportedBy, reportedOn, photos: all } = of
	const count = all.filter(({ side }) => side === 'wrong').length
	return {
		subject: `Something is wrong at ${clientName}`,
		paragraphs: [`${reportedBy} says that something is wrong:`, `“${reported}”`],
		rows: [
			...where(of),
			...(reportedOn === null ? [] : [['Said', shortDay(reportedOn)] as const]),
			...(count === 0 ? [] : [['With it', photos(count)] as const]),
		],
		label: 'Plan a visit',
	}
}

/** To the client's contacts. */
export function madeLetter(of: MailedVisit): Filled {
	const { clientNote, reported, photos: all } = of
	const shown = all.filter(({ side }) => side !== 'wrong').length
	const words = visitWords(of)
	return {
		subject: `${words}${of.placeName === '' ? '' : `: ${of.placeName}`}`,
		paragraphs: [
			reported === '' ? 'We were with you.' : `You said: “${reported}” We were there to look.`,
			...(clientNote === '' ? [] : [clientNote]),
		],
		rows: [['Visit', words], ...where(of), ...(shown === 0 ? [] : [['Pictures', photos(shown)] as const])],
		label: shown === 0 ? 'See your visits' : 'See the pictures',
	}
}
