import { numberWord } from '../format/words'

type Counts = {
	readonly toPlan: number
	readonly planned: number
	/** Of the planned, those whose day is over and that nobody wrote down. */
	readonly late: number
}

const visits = (count: number) => `${numberWord(count)} visit${count === 1 ? '' : 's'}`
const are = (count: number) => (count === 1 ? 'is' : 'are')

/** How the visits stand, in a sentence or two. */
export function bookSentence({ toPlan, planned, late }: Counts): string {
	const open =
		toPlan === 0
			? planned === 0
				? 'No visit is open.'
				: `Nothing is to be planned; ${visits(planned).toLowerCase()} ${are(planned)} planned.`
			: `${visits(toPlan)} to plan, ${planned === 0 ? 'none' : numberWord(planned).toLowerCase()} planned.`
	if (late === 0) return open
	return `${open} ${numberWord(late)} of them ${late === 1 ? 'was' : 'were'} to be made by now: write down how it went.`
}
