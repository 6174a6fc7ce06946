import type { Blank } from './blanks'

/** What fills each blank, as the page of the clauses explains it. */
export const blanksInWords: readonly (readonly [Blank, string])[] = [
	['studio', 'the name of your studio'],
	['client', 'the client’s name'],
	['start', 'the day on which the agreement begins'],
	['end', 'its last day'],
	['places', 'the places where the containers stand, with their addresses'],
	['containers', 'the containers that the seasons name'],
	['visits', 'the visits included, season by season'],
	['prices', 'what each season costs, or that it is quoted each season'],
	['total', 'the fixed prices together'],
	['instalments', 'the instalments with their days'],
	['waters', 'who waters: “you” or “us”'],
	['sold', 'what is sold to the client'],
	['lent', 'what is lent for a season'],
	['lights down', 'the day by which lights are taken down'],
	['notice', 'how many days of notice an early ending takes'],
	['law', 'whose law the agreement follows'],
]
