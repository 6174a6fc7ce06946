import { capital, numberWord } from '../../format/words'
import { type Group, groups } from '../../season/group'
import type { State } from '../state'
import { agreementGroup } from './group'

const small = (count: number) => (count <= 12 ? numberWord(count).toLowerCase() : String(count))

/** How the agreements of a year stand: who has to sign, what waits for the studio, how many hold. */
export function agreementsSentence(states: readonly State[]): string {
	if (states.length === 0) return 'There is no agreement for this year yet.'
	const [them = 0, us = 0] = groups.map(
		(group: Group) => states.filter((each) => agreementGroup(each) === group).length,
	)
	const signed = states.filter(({ is }) => is === 'signed').length
	const waiting =
		them === 0
			? 'No signature is waited for.'
			: `${capital(small(them))} ${them === 1 ? 'waits' : 'wait'} for a signature.`
	const ours = us === 0 ? '' : ` ${capital(small(us))} ${us === 1 ? 'waits' : 'wait'} for you.`
	return `${waiting}${ours} ${capital(small(signed))} ${signed === 1 ? 'is' : 'are'} signed.`
}
