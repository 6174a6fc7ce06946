import { describe, expect, test } from 'vitest'
import { type Command, type Decision, decide, type Refusal, type State, stateOf } from '@/lib/agreement/state'
import { agreementInAWord, signatureTold } from '@/lib/agreement/told'
import { sha256 } from '@/lib/record/hash'
import { day } from '@/lib/units/day'

const [one, two, three] = [sha256('document one'), sha256('document two'), sha256('document three')]
const named = new Map([
	[one, 'one'],
	[two, 'two'],
	[three, 'three'],
])

/** Each state, with document two issued last; “amended” where document one still holds. */
const states = {
	drafting: { is: 'drafting' },
	'to be signed': { is: 'to be signed', issued: two, inForce: null },
	'amended, to be signed': { is: 'to be signed', issued: two, inForce: one },
	signed: { is: 'signed', issued: two, inForce: two },
	declined: { is: 'declined', issued: two, inForce: null },
	'amended, declined': { is: 'declined', issued: two, inForce: one },
	ended: { is: 'ended', issued: two, inForce: null },
} as const satisfies Record<string, State>

const commands = {
	issue: { do: 'issue', document: three, supersedes: two },
	'issue the same': { do: 'issue', document: two, supersedes: two },
	'issue after one': { do: 'issue', document: three, supersedes: one },
	'issue first': { do: 'issue', document: three, supersedes: null },
	sign: { do: 'sign', document: two },
	'sign one': { do: 'sign', document: one },
	decline: { do: 'decline', document: two },
	end: { do: 'end' },
} as const satisfies Record<string, Command>

const told = (decision: Decision) =>
	decision.ok
		? `${decision.to}: ${named.get(decision.issued)}, ${decision.inForce === null ? 'none' : named.get(decision.inForce)} holds`
		: `no: ${decision.why}`

const signs = {
	sign: 'signed: two, two holds',
	'sign one': 'no: a newer document stands',
}
/** Where each step leads from each state, or “no: why not”. Written out whole: a rule that changes shows here. */
const table: Record<keyof typeof states, Record<keyof typeof commands, string>> = {
	drafting: {
		issue: 'no: a newer document stands',
		'issue the same': 'no: a newer document stands',
		'issue after one': 'no: a newer document stands',
		'issue first': 'to be signed: three, none holds',
		sign: 'no: not issued yet',
		'sign one': 'no: not issued yet',
		decline: 'no: not issued yet',
		end: 'no: not issued yet',
	},
	'to be signed': {
		issue: 'to be signed: three, none holds',
		'issue the same': 'no: nothing is different',
		'issue after one': 'no: a newer document stands',
		'issue first': 'no: a newer document stands',
		...signs,
		decline: 'declined: two, none holds',
		end: 'ended: two, none holds',
	},
	'amended, to be signed': {
		issue: 'to be signed: three, one holds',
		'issue the same': 'no: nothing is different',
		'issue after one': 'no: a newer document stands',
		'issue first': 'no: a newer document stands',
		...signs,
		decline: 'declined: two, one holds',
		end: 'ended: two, one holds',
	},
	signed: {
		issue: 'to be signed: three, two holds',
		'issue the same': 'no: nothing is different',
		'issue after one': 'no: a newer document stands',
		'issue first': 'no: a newer document stands',
		sign: 'no: already signed',
		'sign one': 'no: already signed',
		decline: 'no: already signed',
		end: 'ended: two, two holds',
	},
	declined: {
		issue: 'to be signed: three, none holds',
		'issue the same': 'no: nothing is different',
		'issue after one': 'no: a newer document stands',
		'issue first': 'no: a newer document stands',
		sign: 'no: declined',
		'sign one': 'no: declined',
		decline: 'no: declined',
		end: 'no: nothing to end',
	},
	'amended, declined': {
		issue: 'to be signed: three, one holds',
		'issue the same': 'no: nothing is different',
		'issue after one': 'no: a newer document stands',
		'issue first': 'no: a newer document stands',
		sign: 'no: declined',
		'sign one': 'no: declined',
		decline: 'no: declined',
		end: 'ended: two, one holds',
	},
	ended: {
		issue: 'no: ended',
		'issue the same': 'no: ended',
		'issue after one': 'no: ended',
		'issue first': 'no: ended',
		sign: 'no: ended',
		'sign one': 'no: ended',
		decline: 'no: ended',
		end: 'no: ended',
	},
}

describe('each step from each state', () => {
	test.each(Object.entries(states))('%s', (name, state) => {
		const all = Object.entries(commands).map(([step, command]) => [step, told(decide(state, command))])
		expect(Object.fromEntries(all)).toEqual(Object.entries(table).find(([key]) => key === name)?.[1])
	})
})

describe('what is stored, and the day', () => {
	const dated = (hash: typeof one, until: string) => ({ hash, until: day(until) })
	const [last, next] = [day('2027-11-30'), day('2027-12-01')]
	test('signed holds on its last day and has ended on the next', () => {
		const at = (today: typeof last) => stateOf('signed', dated(two, '2027-11-30'), dated(two, '2027-11-30'), today)
		expect(at(last)).toEqual(states.signed)
		expect(at(next)).toEqual(states.ended)
	})

	test('what nobody signed runs out as well', () => {
		const at = (today: typeof last) => stateOf('to be signed', dated(two, '2027-11-30'), null, today)
		expect([at(last).is, at(next).is]).toEqual(['to be signed', 'ended'])
	})

	test('an amendment waits while the one before holds, and when that has run out', () => {
		const at = (today: typeof last) =>
			stateOf('to be signed', dated(two, '2028-05-31'), dated(one, '2027-11-30'), today)
		expect(at(last)).toEqual(states['amended, to be signed'])
		expect(at(next)).toEqual(states['to be signed'])
	})

	test('ended early, it holds until that day', () => {
		const at = (today: typeof last) => stateOf('ended', dated(two, '2028-05-31'), dated(two, '2027-11-30'), today)
		expect(at(last)).toEqual({ is: 'ended', issued: two, inForce: two })
		expect(at(next)).toEqual(states.ended)
	})

	test('what cannot be stored is a broken promise', () => {
		expect(() => stateOf('signed', null, null, last)).toThrow(/without a document/)
		expect(() => stateOf('signed', dated(one, '2027-11-30'), null, last)).toThrow(/nothing was/)
		expect(stateOf('drafting', null, null, last)).toEqual(states.drafting)
	})
})

test('each refusal and each state has its words', () => {
	const refusals = Object.values(table).flatMap((row) => Object.values(row).filter((says) => says.startsWith('no: ')))
	const isNamed = (why: string): why is Refusal => Object.hasOwn(signatureTold, why)
	for (const why of new Set(refusals.map((says) => says.slice(4)))) expect(isNamed(why)).toBe(true)
	const words = Object.values(states).map(agreementInAWord)
	expect(new Set(words).size).toBe(words.length)
})
