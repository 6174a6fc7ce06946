import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { addDays, day } from '@/lib/units/day'
import { decide, type VisitCommand } from '@/lib/visit/decide'
import { visitTold } from '@/lib/visit/told'
import { visitStates } from '@/lib/visit/visit'

const today = day('2026-10-06')
const on = (text: string) => day(text)

describe('where a step leads', () => {
	test.each([
		['to plan', { do: 'plan', day: on('2026-10-09') }, 'planned', 'planned'],
		['to plan', { do: 'plan', day: today }, 'planned', 'planned'],
		['planned', { do: 'plan', day: on('2026-11-20') }, 'planned', 'planned'],
		['dropped', { do: 'plan', day: on('2027-10-07') }, 'planned', 'planned'],
		['to plan', { do: 'record', day: on('2026-10-05') }, 'done', 'made'],
		['planned', { do: 'record', day: today }, 'done', 'made'],
		['done', { do: 'record', day: on('2026-09-30') }, 'done', 'corrected'],
		['to plan', { do: 'drop' }, 'dropped', 'dropped'],
		['planned', { do: 'drop' }, 'dropped', 'dropped'],
	] as const)('%s, %j: %s', (state, command, to, step) => {
		expect(decide(state, command, today)).toEqual({ ok: true, to, step })
	})
})

describe('what is refused, by name', () => {
	test.each([
		['to plan', { do: 'plan', day: on('2026-10-05') }, 'day is over'],
		['to plan', { do: 'plan', day: on('2027-10-08') }, 'too far ahead'],
		['to plan', { do: 'plan', day: on('2126-10-09') }, 'too far ahead'],
		['done', { do: 'plan', day: on('2026-10-12') }, 'made already'],
		['to plan', { do: 'record', day: on('2026-10-07') }, 'not yet'],
		['done', { do: 'record', day: on('2026-10-08') }, 'not yet'],
		['planned', { do: 'record', day: on('2101-01-02') }, 'too far ahead'],
		['planned', { do: 'record', day: on('1926-10-01') }, 'too long ago'],
		['dropped', { do: 'record', day: on('2026-10-01') }, 'dropped'],
		['done', { do: 'drop' }, 'made already'],
		['dropped', { do: 'drop' }, 'dropped'],
	] as const)('%s, %j: %s', (state, command, why) => {
		expect(decide(state, command, today)).toEqual({ ok: false, why })
		expect(visitTold[why]).toMatch(/\.$/)
	})
})

const anyState = fc.constantFrom(...visitStates)
const anyCommand: fc.Arbitrary<VisitCommand> = fc.oneof(
	fc.record({
		do: fc.constantFrom('plan' as const, 'record' as const),
		day: fc.integer({ min: -4000, max: 40_000 }).map((days) => addDays(today, days)),
	}),
	fc.constant({ do: 'drop' as const }),
)

describe('laws', () => {
	test('a visit that was made stays made, whatever comes', () => {
		fc.assert(
			fc.property(anyCommand, (command) => {
				const said = decide('done', command, today)
				expect(said.ok ? said.to : 'done').toBe('done')
			}),
		)
	})

	test('none is made on a day to come, and none is planned for a day that is over', () => {
		fc.assert(
			fc.property(anyState, anyCommand, (state, command) => {
				const said = decide(state, command, today)
				if (!said.ok || command.do === 'drop') return
				expect(said.to === 'done' ? command.day <= today : command.day >= today).toBe(true)
			}),
		)
	})
})
