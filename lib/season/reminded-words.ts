import { numberWord } from '../format/words'

/** How many were reminded at once, and how many were left alone since they had been reminded a moment ago. */
export type RemindedAll = { readonly reminded: number; readonly lately: number }

const clients = (count: number) => `${numberWord(count)} ${count === 1 ? 'client was' : 'clients were'}`

export function remindedInWords({ reminded, lately }: RemindedAll): string {
	const done = reminded === 0 ? 'Nobody was reminded.' : `${clients(reminded)} reminded.`
	if (lately === 0) return reminded === 0 ? `${done} Nobody owes an answer.` : done
	return `${done} ${clients(lately)} not, since they were reminded in the last two days.`
}
