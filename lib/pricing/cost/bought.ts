import { type Cents, cents, zero } from '@/lib/units/cents'
import { divideHalfUp, divideUp, thousandths } from '@/lib/units/decimal'
import type { ContainerId } from '@/lib/units/id'
import { allocate } from '../allocate'
import type { Job, JobLine } from '../job'
import type { Rates } from '../rates'

/** 100 % plus `percent`, in thousandths of a per cent. */
const withPercent = (percent: number) => 100_000n + thousandths(percent)
const wholePercent = 100_000n

const needed = ({ count, kind }: JobLine, rates: Rates) => thousandths(count) * withPercent(rates.lossPercent[kind])

const packPrice = ({ pack }: JobLine) => BigInt(pack.cents) * withPercent(pack.freightPercent)

/** count × (1 + loss) × pack price × (1 + freight) ÷ pack size, half up to the cent. */
export function shareOfPack(line: JobLine, rates: Rates): Cents {
	const size = thousandths(line.pack.size) * wholePercent * wholePercent
	return cents(Number(divideHalfUp(needed(line, rates) * packPrice(line), size)))
}

/** The packs that are bought for some lines of one material, what they cost, and the part of one line of them. */
export type Bought = { readonly packs: number; readonly cents: Cents; readonly isShared: boolean }

function wholePacks(lines: readonly JobLine[], rates: Rates): Map<JobLine, Bought> {
	const [first] = lines
	if (first === undefined) return new Map()
	const all = lines.reduce((total, line) => total + needed(line, rates), 0n)
	const packs = divideUp(all, thousandths(first.pack.size) * wholePercent)
	const cost = cents(Number(divideHalfUp(packs * packPrice(first), wholePercent)))
	const shares = allocate(
		cost,
		lines.map((line) => shareOfPack(line, rates)),
	)
	const isShared = lines.length > 1
	return new Map(lines.map((line, index) => [line, { packs: Number(packs), cents: shares[index] ?? zero, isShared }]))
}

export const boughtAlone = (line: JobLine, rates: Rates): Bought =>
	wholePacks([line], rates).get(line) ?? { packs: 0, cents: zero, isShared: false }

const sameMaterial = ({ name, kind, pack }: JobLine) => JSON.stringify([name, kind, pack])

/** Of equal remainders the cent falls to the same line, however the lines were written down. */
const inOrder = (rates: Rates) => (a: JobLine, b: JobLine) =>
	shareOfPack(a, rates) - shareOfPack(b, rates) || a.holding.localeCompare(b.holding) || a.usesBefore - b.usesBefore

function byMaterial(lines: readonly JobLine[], rates: Rates): Map<JobLine, Bought> {
	const groups = new Map<string, JobLine[]>()
	for (const line of lines.filter(({ onlyHere, holding }) => onlyHere && holding !== 'own'))
		groups.set(sameMaterial(line), [...(groups.get(sameMaterial(line)) ?? []), line])
	return new Map([...groups.values()].flatMap((group) => [...wholePacks(group.toSorted(inOrder(rates)), rates)]))
}

/**
 * Whole packs for what nobody else uses: bought once for all containers that stay, shared out in proportion by largest
 * remainder; for each extra apart, since it may not be chosen.
 */
export function boughtFor(
	{ containers, extras, rates }: Pick<Job, 'containers' | 'extras' | 'rates'>,
	leftOut: readonly ContainerId[],
): ReadonlyMap<JobLine, Bought> {
	const together = containers.filter(({ id }) => !leftOut.includes(id)).flatMap(({ lines }) => lines)
	return new Map([together, ...extras.map(({ lines }) => lines)].flatMap((lines) => [...byMaterial(lines, rates)]))
}
