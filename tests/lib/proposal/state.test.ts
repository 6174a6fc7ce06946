import { describe, expect, test } from 'vitest'
import { afterErasure, type Command, decide, type KeptState, kept, type State, stateOf } from '@/lib/proposal/state'
import { sha256 } from '@/lib/record/hash'
import { groupOf } from '@/lib/season/group'
import { day } from '@/lib/units/day'

const [one, two] = [sha256('revision one'), sha256('revision two')]
const answerBy = day('2026-10-30')

/** Each state, with revision two standing. */
const states: readonly State[] = [
	{ is: 'drafting' },
	{ is: 'waiting for an answer', revision: two, answerBy },
	{ is: 'lapsed', revision: two, answerBy },
	{ is: 'change asked for', revision: two },
	{ is: 'approved', revision: two },
	{ is: 'skipped', revision: two },
	{ is: 'cancelled', revision: two },
	{ is: 'installed', revision: two },
	{ is: 'withdrawn', revision: two },
]

/** Where each step leads from each state, or “no: why not”. Written out whole: a rule that changes shows here. */
const table: Record<State['is'], Record<Command['do'], string>> = {
	drafting: {
		publish: 'waiting for an answer',
		approve: 'no: not published yet',
		'ask for a change': 'no: not published yet',
		skip: 'no: not published yet',
		withdraw: 'no: nothing to withdraw',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	'waiting for an answer': {
		publish: 'waiting for an answer',
		approve: 'approved',
		'ask for a change': 'change asked for',
		skip: 'skipped',
		withdraw: 'withdrawn',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	lapsed: {
		publish: 'waiting for an answer',
		approve: 'no: lapsed',
		'ask for a change': 'no: lapsed',
		skip: 'no: lapsed',
		withdraw: 'withdrawn',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	'change asked for': {
		publish: 'waiting for an answer',
		approve: 'no: a change was asked for',
		'ask for a change': 'no: a change was asked for',
		skip: 'no: a change was asked for',
		withdraw: 'withdrawn',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	approved: {
		publish: 'no: already approved',
		approve: 'no: already approved',
		'ask for a change': 'no: already approved',
		skip: 'no: already approved',
		withdraw: 'no: nothing to withdraw',
		reopen: 'drafting',
		cancel: 'cancelled',
		install: 'installed',
	},
	skipped: {
		publish: 'waiting for an answer',
		approve: 'no: already skipped',
		'ask for a change': 'no: already skipped',
		skip: 'no: already skipped',
		withdraw: 'no: nothing to withdraw',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	cancelled: {
		publish: 'no: cancelled',
		approve: 'no: cancelled',
		'ask for a change': 'no: cancelled',
		skip: 'no: cancelled',
		withdraw: 'no: nothing to withdraw',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
	installed: {
		publish: 'no: installed',
		approve: 'no: installed',
		'ask for a change': 'no: installed',
		skip: 'no: installed',
		withdraw: 'no: nothing to withdraw',
		reopen: 'no: installed',
		cancel: 'no: installed',
		install: 'no: installed',
	},
	withdrawn: {
		publish: 'waiting for an answer',
		approve: 'no: withdrawn',
		'ask for a change': 'no: withdrawn',
		skip: 'no: withdrawn',
		withdraw: 'no: nothing to withdraw',
		reopen: 'no: not approved',
		cancel: 'no: not approved',
		install: 'no: not approved',
	},
}

const commands = (revision: typeof one): readonly Command[] => [
	{ do: 'publish' },
	{ do: 'approve', revision },
	{ do: 'ask for a change', revision },
	{ do: 'skip', revision },
	{ do: 'withdraw' },
	{ do: 'reopen' },
	{ do: 'cancel' },
	{ do: 'install' },
]
const isAnswer = (command: Command) => 'revision' in command

const says = (state: State, command: Command) => {
	const decision = decide(state, command)
	return decision.ok ? decision.to : `no: ${decision.why}`
}

const cross = states.flatMap((state) =>
	commands(two).map((command) => ({ state, command, is: state.is, step: command.do, to: table[state.is][command.do] })),
)

describe('every state and every step', () => {
	test('are in the table', () => {
		expect(states.map(({ is }) => is).toSorted()).toEqual([...kept, 'lapsed'].toSorted())
		expect(cross).toHaveLength(9 * 8)
	})

	test.each(cross)('$is · $step · $to', ({ state, command, to }) => {
		expect(says(state, command)).toBe(to)
	})

	test('an answer to an older revision is told so while the newer one waits, and never taken', () => {
		const waiting: State = { is: 'waiting for an answer', revision: two, answerBy }
		for (const command of commands(one).filter(isAnswer))
			expect(says(waiting, command)).toBe('no: a newer revision stands')
	})

	test.each(states.filter(({ is }) => is !== 'waiting for an answer'))(
		'$is: that it is closed is told before that the answer is to an older revision',
		(state) => {
			for (const command of commands(one).filter(isAnswer))
				expect(says(state, command)).toBe(table[state.is][command.do])
		},
	)
})

describe('what is stored', () => {
	test.each([
		{ name: 'the day before', today: '2026-10-29', is: 'waiting for an answer' },
		{ name: 'the day itself', today: '2026-10-30', is: 'waiting for an answer' },
		{ name: 'the day after', today: '2026-10-31', is: 'lapsed' },
		{ name: 'the year after', today: '2027-01-02', is: 'lapsed' },
	])('waits up to and with the day to answer by: $name', ({ today, is }) => {
		expect(stateOf('waiting for an answer', one, answerBy, day(today))).toEqual({ is, revision: one, answerBy })
	})

	test('nothing else lapses', () => {
		const late = day('2027-03-01')
		for (const stored of kept)
			if (stored !== 'waiting for an answer' && stored !== 'drafting')
				expect(stateOf(stored, two, answerBy, late)).toEqual({ is: stored, revision: two })
		expect(stateOf('drafting', null, null, late)).toEqual({ is: 'drafting' })
		expect(stateOf('drafting', one, answerBy, late)).toEqual({ is: 'drafting' })
	})

	test('without its revision or its day is refused', () => {
		expect(() => stateOf('approved', null, answerBy, answerBy)).toThrow('stateOf: "approved" without a revision')
		expect(() => stateOf('waiting for an answer', one, null, answerBy)).toThrow('without a day to answer by')
	})
})

test('an erasure takes back what is open, and leaves nobody waiting', () => {
	const open: readonly KeptState[] = ['drafting', 'waiting for an answer', 'change asked for']
	for (const state of kept) {
		expect([state, afterErasure(state)]).toEqual([state, open.includes(state) ? 'withdrawn' : state])
		expect(groupOf(afterErasure(state))).toBe('settled')
	}
})
