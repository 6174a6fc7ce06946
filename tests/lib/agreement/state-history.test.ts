import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
	type Command,
	type Dated,
	type Decision,
	decide,
	type KeptState,
	type State,
	stateOf,
} from '@/lib/agreement/state'
import { type Hash, sha256 } from '@/lib/record/hash'
import { addDays, type Day, day } from '@/lib/units/day'

const hashOf = (number: number): Hash => sha256(`document ${number}`)

/** What happens, one after the other; a document is named by how many were issued after it. */
type Step = { readonly do: Command['do']; readonly older: number; readonly days: number; readonly runs: number }
const steps = fc.array(
	fc.record({
		do: fc.constantFrom<Command['do'][]>('issue', 'issue', 'sign', 'sign', 'decline', 'end'),
		older: fc.constantFrom(0, 0, 0, 0, 0, 1, 2, -1),
		days: fc.constantFrom(0, 0, 1, 3, 20),
		runs: fc.constantFrom(0, 5, 30, 90),
	}),
	{ minLength: 3, maxLength: 30 },
)

/** The naive model: every document ever issued with what became of it, and the day of the ending. */
type Issued = { readonly hash: Hash; readonly until: Day; fate: 'open' | 'signed' | 'declined' }
type Model = { readonly all: Issued[]; endsOn: Day | null }

const holds = ({ all, endsOn }: Model, today: Day): Hash | null => {
	const signed = all.findLast(({ fate }) => fate === 'signed')
	return signed && today <= signed.until && (endsOn === null || today <= endsOn) ? signed.hash : null
}

function isOf(model: Model, today: Day): State['is'] {
	const last = model.all.at(-1)
	if (last === undefined) return 'drafting'
	if (model.endsOn !== null) return 'ended'
	if (last.fate === 'declined') return 'declined'
	if (today > last.until) return 'ended'
	return last.fate === 'signed' ? 'signed' : 'to be signed'
}

function mayHappen(model: Model, command: Command, today: Day): boolean {
	const is = isOf(model, today)
	const last = model.all.at(-1)?.hash ?? null
	if (command.do === 'issue')
		return is !== 'ended' && command.supersedes === last && !model.all.some(({ hash }) => hash === command.document)
	if (command.do === 'end')
		return is === 'to be signed' || is === 'signed' || (is === 'declined' && holds(model, today) !== null)
	return is === 'to be signed' && command.document === last
}

type World = { stored: KeptState; issued: Dated | null; signed: Dated | null }
type Line = {
	readonly before: State
	readonly command: Command
	readonly isTaken: boolean
	readonly after: State
	/** By the model. */
	readonly isAllowed: boolean
	readonly said: { readonly is: State['is']; readonly issued: Hash | null; readonly inForce: Hash | null }
}

const nameOf = (number: number) => (number > 0 ? hashOf(number) : null)

function commandOf({ do: step, older }: Step, count: number): Command {
	if (step === 'end') return { do: step }
	if (step === 'issue') return { do: step, document: hashOf(count + 1), supersedes: nameOf(count - older) }
	return { do: step, document: hashOf(count - older) }
}

/** The last day of what holds, where an ending is sooner than the end that was agreed. */
const sooner = (signed: Dated | null, on: Day): Dated | null =>
	signed && { hash: signed.hash, until: on < signed.until ? on : signed.until }

/** What a record would keep; `on` is the last day of what is issued, or the day of an ending. */
function keep(world: World, command: Command, { to, issued }: Extract<Decision, { ok: true }>, on: Day) {
	world.stored = to
	if (command.do === 'issue') world.issued = { hash: issued, until: on }
	if (command.do === 'sign') world.signed = world.issued
	if (command.do === 'end') world.signed = sooner(world.signed, on)
}

function remember(model: Model, command: Command, on: Day) {
	const last = model.all.at(-1)
	if (command.do === 'issue') model.all.push({ hash: command.document, until: on, fate: 'open' })
	else if (command.do === 'end') model.endsOn = on
	else if (last) last.fate = command.do === 'sign' ? 'signed' : 'declined'
}

/** Plays the steps on what a record would keep, and on the model beside it. */
function played(all: readonly Step[]): Line[] {
	const world: World = { stored: 'drafting', issued: null, signed: null }
	const model: Model = { all: [], endsOn: null }
	let today = day('2026-12-01')
	const now = () => stateOf(world.stored, world.issued, world.signed, today)
	return all.map((step) => {
		today = addDays(today, step.days)
		const before = now()
		const command = commandOf(step, model.all.length)
		const decision = decide(before, command)
		const isAllowed = mayHappen(model, command, today)
		const on = addDays(today, step.runs)
		if (decision.ok) keep(world, command, decision, on)
		if (isAllowed) remember(model, command, on)
		const said = { is: isOf(model, today), issued: model.all.at(-1)?.hash ?? null, inForce: holds(model, today) }
		return { before, command, isTaken: decision.ok, after: now(), isAllowed, said }
	})
}

const always = (law: (lines: readonly Line[]) => void) =>
	fc.assert(
		fc.property(steps, (all) => {
			law(played(all))
		}),
		{ numRuns: 500 },
	)

const inForce = (state: State) => (state.is === 'drafting' ? null : state.inForce)

describe('whatever happens, in whatever order', () => {
	test('an agreement stands as a naive reading of its history says', () => {
		always((lines) => {
			for (const { isTaken, isAllowed, after, said } of lines) {
				expect(isTaken).toBe(isAllowed)
				expect({ issued: null, inForce: null, ...after }).toEqual(said)
			}
		})
	})

	test('a refused step changes nothing', () => {
		always((lines) => {
			for (const { before, isTaken, after } of lines) if (!isTaken) expect(after).toEqual(before)
		})
	})

	test('a document is signed once at most, and never after it was declined', () => {
		always((lines) => {
			const answered = lines.flatMap(({ command, isTaken }) =>
				isTaken && (command.do === 'sign' || command.do === 'decline') ? [command.document] : [],
			)
			expect(new Set(answered).size).toBe(answered.length)
		})
	})

	test('what holds changes by a signature, by time and by an ending alone', () => {
		always((lines) => {
			for (const { before, command, after } of lines)
				if (inForce(before) !== inForce(after)) expect(['sign', 'end']).toContain(command.do)
		})
	})

	test('what has ended stays so', () => {
		always((lines) => {
			const first = lines.findIndex(({ after }) => after.is === 'ended')
			if (first >= 0) for (const { after } of lines.slice(first)) expect(after.is).toBe('ended')
		})
	})

	test('so that these laws see something: all states are reached, and an amendment waits while the one before holds', () => {
		const seen = new Set<string>()
		always((lines) => {
			for (const { after } of lines) seen.add(`${after.is}${inForce(after) === null ? '' : ', one holds'}`)
		})
		expect([...seen].toSorted()).toEqual([
			'declined',
			'declined, one holds',
			'drafting',
			'ended',
			'ended, one holds',
			'signed, one holds',
			'to be signed',
			'to be signed, one holds',
		])
	})
})
