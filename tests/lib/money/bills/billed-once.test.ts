import fc from 'fast-check'
import { expect, test } from 'vitest'
import { chargeCents } from '@/lib/money/charge'
import { seasonName } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { type Asked, charge } from '../sample'
import { type Act, type Approved, begin, type Signed, seasons, step, toDo, type World, wholeOf } from './history'

const season = fc.nat(1)
const perMille = fc.oneof(fc.constantFrom(0, 500, 1000), fc.nat(1000))
const amount = fc.oneof(fc.constantFrom(0, 1, 101), fc.integer({ min: 1, max: 300_000 }))

const asked: fc.Arbitrary<Asked> = fc
	.record({
		kind: fc.constantFrom('business', 'household'),
		netDays: fc.constantFrom(15, 30),
		depositPercent: fc.constantFrom(0, 33.333, 50, 100),
		agreed: fc.oneof(fc.constant(0), fc.constant(0), fc.integer({ min: 1, max: 90_000 })),
		net: amount,
		taxes: fc.tuple(fc.nat(9000), fc.nat(9000)),
	})
	.map(({ net, taxes: [first, second], ...rest }) => ({
		...rest,
		apart: charge(net, [6000, net, first], [7250, net, second]),
	}))

const acts: fc.Arbitrary<Act> = fc.oneof(
	{ weight: 5, arbitrary: fc.record({ do: fc.constant('approve'), season, asked }) },
	{ weight: 3, arbitrary: fc.record({ do: fc.constantFrom('reopen', 'install'), season }) },
	{ weight: 2, arbitrary: fc.record({ do: fc.constant('cancel'), season, perMille }) },
	{
		weight: 3,
		arbitrary: fc.record({
			do: fc.constant('sign'),
			covers: fc.tuple(fc.boolean(), fc.boolean()),
			parts: fc.array(fc.record({ after: fc.nat(200), cents: amount }), { minLength: 1, maxLength: 5 }),
		}),
	},
	{ weight: 1, arbitrary: fc.record({ do: fc.constant('end'), perMille }) },
	{ weight: 4, arbitrary: fc.record({ do: fc.constant('wait'), days: fc.nat(60) }) },
)

/** The odd half cent to the deposit. */
function depositOf({ kind, depositPercent, agreed, apart }: Asked): number {
	if (kind === 'business' || agreed > 0) return 0
	const exact = BigInt(chargeCents(apart)) * BigInt(Math.round(depositPercent * 1000))
	return Number((exact * 2n + 100_000n) / 200_000n)
}

/** What should have been asked for of an approval by now, worked out from what happened to it alone. */
function owedOf({ asked: of, since }: Approved): number {
	const apart = chargeCents(of.apart)
	if (since.is === 'reopened') return 0
	if (since.is === 'installed') return apart
	return since.is === 'cancelled' ? Math.max(0, since.remainsCents - of.agreed) : depositOf(of)
}

function owedOfAgreement({ signedOn, instalments, ended }: Signed, { today }: World): number {
	if (ended !== null) return Math.min(ended.owedCents, wholeOf({ instalments }))
	return instalments
		.filter(({ dueOn }) => dueOn !== null && (dueOn <= today || signedOn > dueOn))
		.reduce((all, each) => all + chargeCents(each.charge), 0)
}

const billed = (world: World, begins: string) => {
	const found = world.written.filter(({ key }) => key.startsWith(begins))
	return found.reduce((all, { charge: of, back }) => all + chargeCents(of) - back, 0)
}

const keyOf = ({ proposal, revision }: Approved) => `proposal ${proposal} ${revision} `

/** Who asks for a season's price: its proposal, and each agreement that it lies under. */
function payers({ season: at, asked: of, approvedOn }: Approved, { agreements }: World): number {
	const name = seasonName(seasons[at] ?? { quarter: 'summer', year: 1 })
	const isUnder = ({ covers, ended }: Signed) =>
		covers.some((each) => seasonName(each) === name) && !(ended !== null && ended.on < approvedOn)
	return (of.agreed === 0 ? 1 : 0) + (agreements.some(isUnder) ? 1 : 0)
}

function judge(world: World): void {
	expect(toDo(world)).toEqual({ invoices: [], credits: [] })
	const keys = world.written.map(({ key }) => key)
	expect(new Set(keys).size).toBe(keys.length)
	for (const approval of world.approvals) {
		expect(billed(world, keyOf(approval))).toBe(owedOf(approval))
		if (approval.since.is === 'approved' || approval.since.is === 'installed') expect(payers(approval, world)).toBe(1)
	}
	for (const agreed of world.agreements)
		expect(billed(world, `agreement ${agreed.agreement} `)).toBe(owedOfAgreement(agreed, world))
	const all = world.approvals.map(owedOf).concat(world.agreements.map((each) => owedOfAgreement(each, world)))
	expect(billed(world, '')).toBe(all.reduce((total, each) => total + each, 0))
	for (const { charge: of, back } of world.written) expect(back).toBeLessThanOrEqual(chargeCents(of))
}

test('whatever people do, every cent that is owed is billed once, and nothing else is', () => {
	const seen = new Set<string>()
	fc.assert(
		fc.property(fc.array(acts, { minLength: 1, maxLength: 14 }), (all) => {
			let world = begin
			for (const act of all) {
				const next = step(world, act)
				if (next !== world) seen.add(act.do)
				world = next
				judge(world)
			}
		}),
		{ numRuns: 300 },
	)
	expect([...seen].toSorted()).toEqual(['approve', 'cancel', 'end', 'install', 'reopen', 'sign', 'wait'])
})

test('of an approval that is in, what was billed is its price and its tax at each rate', () => {
	fc.assert(
		fc.property(asked, (of) => {
			const plain = { ...of, agreed: 0 }
			const world = [
				{ do: 'approve', season: 0, asked: plain } as const,
				{ do: 'wait', days: 40 } as const,
				{ do: 'install', season: 0 } as const,
			].reduce(step, begin)
			const summed = (pick: (each: World['written'][number]['charge']) => number) =>
				world.written.reduce((all, each) => all + pick(each.charge), 0)
			expect(summed(({ netCents }) => netCents)).toBe(plain.apart.netCents)
			for (const [at, tax] of plain.apart.tax.entries()) {
				if (chargeCents(plain.apart) === 0) continue
				expect(summed((each) => each.tax[at]?.cents ?? cents(0))).toBe(tax.cents)
				expect(summed((each) => each.tax[at]?.baseCents ?? cents(0))).toBe(tax.baseCents)
			}
		}),
	)
})
