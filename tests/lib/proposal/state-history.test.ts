import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Command, decide, type KeptState, type State, stateOf } from '@/lib/proposal/state'
import { type Hash, sha256 } from '@/lib/record/hash'
import { addDays, type Day, day } from '@/lib/units/day'

const hashOf = (number: number): Hash => sha256(`revision ${number}`)

/** What happens, one after the other; an answer names a revision by how many came after it. */
type Step = { readonly do: Command['do']; readonly older: number; readonly days: number }
const steps = fc.array(
	fc.record({
		do: fc.constantFrom<Command['do'][]>(
			...(['publish', 'approve', 'ask for a change', 'skip', 'withdraw', 'reopen', 'cancel', 'install'] as const),
		),
		older: fc.constantFrom(0, 0, 0, 0, 1, 2, -1),
		days: fc.constantFrom(0, 0, 0, 1, 2, 9),
	}),
	{ minLength: 3, maxLength: 25 },
)

type Line = { readonly before: State; readonly command: Command; readonly to: KeptState | null; readonly after: State }
type World = { stored: KeptState; number: number; today: Day; answerBy: Day }

function commandOf(step: Step, { number }: World): Command {
	if (step.do === 'approve' || step.do === 'ask for a change' || step.do === 'skip')
		return { do: step.do, revision: hashOf(number - step.older) }
	return { do: step.do }
}

/** Plays the steps on what a record would keep: a stored state, the standing revision, the day to answer by. */
function played(all: readonly Step[]): Line[] {
	const world: World = { stored: 'drafting', number: 0, today: day('2026-10-01'), answerBy: day('2026-10-08') }
	const now = () => stateOf(world.stored, world.number === 0 ? null : hashOf(world.number), world.answerBy, world.today)
	return all.map((step) => {
		world.today = addDays(world.today, step.days)
		const before = now()
		const command = commandOf(step, world)
		const decision = decide(before, command)
		if (decision.ok) {
			world.stored = decision.to
			if (command.do === 'publish') {
				world.number += 1
				world.answerBy = addDays(world.today, 7)
			}
		}
		return { before, command, to: decision.ok ? decision.to : null, after: now() }
	})
}

const holds = (law: (lines: readonly Line[]) => void) =>
	fc.assert(
		fc.property(steps, (all) => law(played(all))),
		{ numRuns: 1000 },
	)

const revisionOf = (state: State) => (state.is === 'drafting' ? null : state.revision)

describe('whatever happens, in whatever order', () => {
	test('an approval is never overwritten: only the studio’s reopening, cancelling or installing follows it', () => {
		holds((lines) => {
			for (const { before, command, to, after } of lines) {
				if (before.is !== 'approved') continue
				if (to === null) expect(after).toEqual(before)
				else expect(['reopen', 'cancel', 'install']).toContain(command.do)
			}
		})
	})

	test('a refused step changes nothing', () => {
		holds((lines) => {
			for (const { before, to, after } of lines) if (to === null) expect(after).toEqual(before)
		})
	})

	test('an answer to another revision than the one that stands never changes the state', () => {
		holds((lines) => {
			for (const { before, command, to } of lines)
				if ('revision' in command && command.revision !== revisionOf(before)) expect(to).toBeNull()
		})
	})

	test('of the answers to a revision one is taken at most', () => {
		holds((lines) => {
			const answered = lines.flatMap(({ command, to }) => ('revision' in command && to ? [command.revision] : []))
			expect(new Set(answered).size).toBe(answered.length)
		})
	})

	test('nothing is answered after its day, nor before it is out', () => {
		holds((lines) => {
			for (const { before, command, to } of lines)
				if ('revision' in command && to !== null) expect(before.is).toBe('waiting for an answer')
		})
	})

	test('what is installed or cancelled stays so', () => {
		holds((lines) => {
			for (const { before, after } of lines)
				if (before.is === 'installed' || before.is === 'cancelled') expect(after).toEqual(before)
		})
	})

	test('a proposal waits, and can lapse, only behind a publishing', () => {
		holds((lines) => {
			for (const { before, command, after } of lines)
				if (after.is === 'waiting for an answer' && before.is !== after.is) expect(command.do).toBe('publish')
		})
	})

	test('so that these laws see something: all states are reached', () => {
		const seen = new Set<string>()
		holds((lines) => {
			for (const { after } of lines) seen.add(after.is)
		})
		expect(seen.size).toBe(9)
	})
})
