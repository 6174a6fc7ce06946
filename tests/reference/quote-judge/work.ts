import type { Job, JobContainer, JobExtra, JobLine, JobVisit } from '@/lib/pricing/job'
import { exact, type Fraction, half, kept, none, percent, plus, shareOut } from './exact'

/** What one thing costs and is priced at, lines apart from minutes; amounts in cents. */
export type Working = {
	readonly plants: Fraction
	readonly goods: Fraction
	readonly material: Fraction
	readonly minutes: Fraction
}

const packsOf = ({ count, kind, pack }: JobLine, rates: Job['rates']): Fraction =>
	percent(exact(count), 100 + rates.lossPercent[kind]).div(exact(pack.size))

const packPriceOf = ({ pack }: JobLine): Fraction =>
	exact(pack.cents)
		.mul(exact(100).add(exact(pack.freightPercent)))
		.div(100)

const looks = ({ name, kind, pack: { size, cents, freightPercent } }: JobLine) =>
	[name, kind, size, cents, freightPercent].join()

/** Whole packs once for all lines of the material that stand together, and the part of this line in them. */
function wholePacks(line: JobLine, rates: Job['rates'], among: readonly JobLine[]): Fraction {
	const share = (each: JobLine) => half(packsOf(each, rates).mul(packPriceOf(each)))
	const rank = (each: JobLine) => [share(each).valueOf() + 1e12, each.holding, each.usesBefore].join()
	const same = among
		.filter((each) => each.onlyHere && each.holding !== 'own' && looks(each) === looks(line))
		.toSorted((a, b) => (rank(a) < rank(b) ? -1 : rank(a) > rank(b) ? 1 : 0))
	const cost = half(
		plus(same.map((each) => packsOf(each, rates)))
			.ceil()
			.mul(packPriceOf(line)),
	)
	return shareOut(cost, same.map(share))[same.indexOf(line)] ?? none
}

/** Line cost = count × (1 + loss) × pack price × (1 + freight) ÷ pack size; ÷ uses of life when lent; × markup. */
function lineAmounts(line: JobLine, { rates }: Job, among: readonly JobLine[]): { price: Fraction; cost: Fraction } {
	if (line.holding === 'own') return { price: none, cost: none }
	const { ornament, faux, light } = rates.usesOfLife
	const lives: Partial<Record<string, number>> = { ornament, faux, light }
	const life = line.holding === 'lent' ? (lives[line.kind] ?? Number.NaN) : 1
	const share = half(half(packsOf(line, rates).mul(packPriceOf(line))).div(life))
	const bought = line.onlyHere ? half(wholePacks(line, rates, among).div(life)) : share
	const isWrittenOff = line.holding === 'lent' && line.usesBefore >= life
	return { price: half(share.mul(exact(rates.markup[line.kind]))), cost: isWrittenOff ? none : bought }
}

/** Green 0.4, branch 0.5, accent 0.75, string 6, cluster made 4 and set as an accent; lent: back, cleaned, stored 1. */
function lineMinutes({ piece, count, piecesPerUnit, holding }: JobLine, { rates }: Job): Fraction {
	const { green, branch, accent, plant, string, clusterToMake, lentBack } = rates.pieceMinutes
	const each = {
		...{ green, branch, accent, plant, string },
		...{ none: 0, 'cluster kept': accent, 'cluster to make': accent },
	}[piece]
	const made = piece === 'cluster to make' ? exact(clusterToMake) : none
	const back = holding === 'lent' ? exact(lentBack) : none
	return kept(kept(exact(count).mul(exact(piecesPerUnit))).mul(exact(each).add(made).add(back)))
}

function linesOf(lines: readonly JobLine[], job: Job, minutes: Fraction, among: readonly JobLine[]): Working {
	const all = lines.map((line) => ({ kind: line.kind, ...lineAmounts(line, job, among) }))
	const plants = all.filter(({ kind }) => kind === 'fresh' || kind === 'live')
	const goods = all.filter(({ kind }) => kind !== 'fresh' && kind !== 'live')
	return {
		plants: plus(plants.map(({ price }) => price)),
		goods: plus(goods.map(({ price }) => price)),
		material: plus(all.map(({ cost }) => cost)),
		minutes: plus([minutes, ...lines.map((line) => lineMinutes(line, job))]),
	}
}

/** Base, prep, water and tidy; spray where evergreens are cut; the past season out, half as long again after summer. */
export function containerWorking(
	{ openingCm2, isNew, lines }: JobContainer,
	job: Job,
	left: ReadonlySet<string>,
): Working {
	const { base, prep, waterAndTidy, spray, cleanOutPer1000Cm2, cleanOutAfterSummer } = job.rates.containerMinutes
	const isGreen = lines.some(({ kind, piece }) => kind === 'fresh' && piece === 'green')
	const out = exact(openingCm2).div(1000).mul(exact(cleanOutPer1000Cm2))
	const longer = job.quarter === 'autumn' ? out.mul(exact(cleanOutAfterSummer)) : out
	const always = plus([base, prep, waterAndTidy, isGreen ? spray : 0].map(exact))
	const staying = job.containers.filter(({ id }) => !left.has(id))
	const together = staying.sort((a, b) => (a.id < b.id ? -1 : 1)).flatMap((each) => each.lines)
	return linesOf(lines, job, always.add(isNew ? none : kept(longer)), together)
}

export const extraWorking = ({ minutes, lines }: JobExtra, job: Job): Working =>
	linesOf(lines, job, exact(minutes), lines)

/** Set-up and loading, apart from 2 × minutes from base × crew ÷ stops of the day. */
export function travelMinutes({ driveMinutes }: JobVisit, { rates }: Job): { stop: Fraction; drive: Fraction } {
	const { setUp, load } = rates.visitMinutes
	const drive = kept(exact(driveMinutes).mul(2).mul(rates.crew).div(rates.stopsADay))
	return { stop: exact(setUp).add(exact(load)), drive }
}

/** A new container is filled; an old one is topped up in spring. */
export function litresOf({ soilL, isNew }: JobContainer, { quarter, rates }: Job): Fraction {
	if (isNew) return exact(soilL)
	return quarter === 'spring' ? kept(percent(exact(soilL), rates.soil.topUpPercent)) : none
}

export const billed = (minutes: Fraction, { rates }: Job): Fraction =>
	half(minutes.mul(rates.billedCentsPerHour).div(60))

/** Wage × burden × paid ÷ billable hours; the crew is the owner and helpers in equal parts, a design the owner's. */
export function loaded(minutes: Fraction, isDesign: boolean, { rates }: Job): Fraction {
	const { owner, helper } = rates.wageCentsPerHour
	const wages = isDesign ? [owner] : [owner, ...Array.from({ length: rates.crew - 1 }, () => helper)]
	const wage = plus(wages.map(exact)).div(wages.length)
	return half(wage.mul(exact(rates.burden)).mul(rates.paidHours).div(rates.billableHours).mul(minutes).div(60))
}
