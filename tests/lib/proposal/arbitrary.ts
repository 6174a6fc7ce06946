import fc from 'fast-check'
import type { Draft, DraftLine } from '@/lib/proposal/draft'
import { holdings, roles } from '@/lib/recipe/material'
import { cents } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { type ContainerId, id, type MaterialId, type PlaceId } from '@/lib/units/id'

/** Random drafts as the editor can leave them behind, far from ready or not. */
export type Known = {
	readonly containers: fc.Arbitrary<ContainerId>
	readonly materials: fc.Arbitrary<MaterialId>
	readonly places: fc.Arbitrary<PlaceId>
}

const any = <Of extends string>() => fc.uuid({ version: 7 }).map((text) => id<Of>(text))

/** What names nothing that is known. */
export const anyIds: Known = { containers: any<'container'>(), materials: any<'material'>(), places: any<'place'>() }
const keys = fc.string({
	unit: fc.constantFrom(...'abcdefghijklmnopqrstuvwxyz0123456789'),
	minLength: 1,
	maxLength: 12,
})
const decimals = (max: number) =>
	fc.oneof(
		fc.integer({ min: 0, max }),
		fc.integer({ min: 0, max: max * 1000 }).map((n) => n / 1000),
	)
const money = fc.integer({ min: 0, max: 10_000_000 }).map(cents)
const hexes = fc.integer({ min: 0, max: 0xffffff }).map((value) => hex(`#${value.toString(16).padStart(6, '0')}`))
const days = fc.option(fc.integer({ min: 0, max: 9000 }).map((count) => addDays(day('2020-01-01'), count)))

const letters = fc.oneof(
	{ weight: 8, arbitrary: fc.constantFrom(...'abc defé’“”–&<>"\'\\/%0 9') },
	{ weight: 2, arbitrary: fc.constantFrom('🌲', 'ж', 'ה', '\u0301', 'が', '\t') },
)

/** Words as a form leaves them: trimmed, composed, of one line unless `lines`. */
export function words(max: number, { lines = false } = {}): fc.Arbitrary<string> {
	const unit = lines
		? fc.oneof({ weight: 9, arbitrary: letters }, { weight: 1, arbitrary: fc.constant('\n') })
		: letters
	return fc
		.array(unit, { maxLength: Math.min(max, 40) })
		.map((parts) => parts.join('').normalize('NFC').trim())
		.filter((text) => text.length <= max)
}

const linesOf = ({ materials }: Known): fc.Arbitrary<DraftLine[]> =>
	fc.array(
		fc.record({
			material: materials,
			role: fc.constantFrom(...roles),
			holding: fc.constantFrom(...holdings),
			count: fc.oneof(
				decimals(9999).map((value) => ({ way: 'typed' as const, value })),
				fc.tuple(decimals(9999), fc.boolean()).map(([value, isKept]) => ({
					way: 'grown' as const,
					value,
					isKept,
					grows: { way: 'stems' as const, count: 7 },
				})),
			),
		}),
		{ maxLength: 3 },
	)

const optionsOf = (known: Known): fc.Arbitrary<Draft['options'][number]> =>
	fc.record({
		key: keys,
		name: words(60),
		palette: fc.array(fc.record({ name: words(40), hex: hexes, echoes: words(60) }), { maxLength: 3 }),
		pots: fc.array(fc.record({ container: known.containers, lines: linesOf(known) }), { maxLength: 3 }),
		supplementCents: money,
	})

const extrasOf = (known: Known): fc.Arbitrary<Draft['extras'][number]> =>
	fc.record({
		key: keys,
		name: words(80),
		words: words(300),
		place: known.places,
		minutes: decimals(600),
		lines: linesOf(known),
	})

const agreementsOf = ({ containers }: Known): fc.Arbitrary<Draft['agreement']> =>
	fc.oneof(
		fc.constant({ is: 'none' as const }),
		decimals(100).map((percent) => ({ is: 'discount' as const, percent })),
		fc
			.tuple(money, fc.array(containers, { maxLength: 3 }))
			.map(([amount, named]) => ({ is: 'fixed' as const, cents: amount, containers: named })),
	)

const overruledOf = ({ containers }: Known): fc.Arbitrary<Draft['overruled'][number]> =>
	fc.record({
		option: fc.constantFrom('a', 'b'),
		container: containers,
		check: fc.constantFrom('height/look again', 'thin fill/caution'),
		note: words(200).filter((note) => note !== ''),
	})

export const draftsOf = (known: Known): fc.Arbitrary<Draft> =>
	fc.record({
		v: fc.constant(1 as const),
		title: words(120),
		letter: words(4000, { lines: true }),
		window: fc.record({ from: days, to: days }),
		answerBy: days,
		design: fc.constantFrom('new', 'repeat'),
		takeDown: fc.boolean(),
		containers: fc.array(fc.record({ id: known.containers, mayLeaveOut: fc.boolean(), isNew: fc.boolean() }), {
			maxLength: 3,
		}),
		options: fc.uniqueArray(optionsOf(known), { maxLength: 3, selector: ({ key }) => key }),
		extras: fc.uniqueArray(extrasOf(known), { maxLength: 3, selector: ({ key }) => key }),
		agreement: agreementsOf(known),
		overruled: fc.array(overruledOf(known), { maxLength: 2 }),
	})

export const drafts = draftsOf(anyIds)
