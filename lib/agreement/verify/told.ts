import { momentWords } from '../../format/moment'
import type { Compared } from './compared'

export type Told = {
	readonly title: string
	readonly says: string
	readonly proves: string
	readonly provesNot: string
}

const nothing = { proves: '', provesNot: '' }

/** What comes of a comparison, in words: what it shows, and what it does not. */
export function comparedInWords(compared: Compared, timeZone: string): Told {
	switch (compared.is) {
		case 'no hash':
			return {
				title: 'That is no hash',
				says: 'A hash (SHA-256) is 64 digits from 0 to 9 and a to f. Spaces and capitals do not matter. Choose the file instead, and it is computed here, on this device.',
				...nothing,
			}
		case 'unknown':
			return {
				title: 'The record does not know this file',
				says: 'Not one file that you may see has this hash. Either it is another file, or a byte of it was changed: opening and saving it in another program, or printing it to a file, is enough.',
				proves: 'It is not, byte for byte, what was sealed and kept here.',
				provesNot:
					'It does not show what was changed, or by whom. The file that was kept can be downloaded again from its agreement.',
			}
		case 'known': {
			const { name, sealedAt, isPast } = compared.paper
			return {
				title: 'The record knows this file',
				says: `${name}. Sealed on ${momentWords(sealedAt, timeZone)}.${isPast ? ' It does not hold any more.' : ''}`,
				proves: 'Byte for byte it is the file that was sealed and kept here: nothing in it was changed since.',
				provesNot:
					'It does not show who signed it: its last page says what is known of that. And this page is the studio’s own: for a check without the studio, ask a PDF reader for the seal, or use the program that comes with the export.',
			}
		}
		default:
			return compared satisfies never
	}
}
