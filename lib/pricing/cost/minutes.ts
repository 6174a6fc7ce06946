import type { Quarter } from '@/lib/season/season'
import { divideHalfUp, thousandths } from '@/lib/units/decimal'
import type { Job, JobContainer, JobExtra, JobLine, JobVisit } from '../job'
import type { Rates } from '../rates'

/** Person-minutes of one thing, exact to a thousandth, with how they came about. */
export type Work = {
	readonly what: string
	readonly minutes: number
	readonly how: string
}

const product = (a: number, b: number) => Number(divideHalfUp(thousandths(a) * thousandths(b), 1000n)) / 1000

const total = (minutes: readonly number[]) => Number(minutes.reduce((sum, each) => sum + thousandths(each), 0n)) / 1000

function perPiece({ piece }: JobLine, { pieceMinutes }: Rates): number {
	switch (piece) {
		case 'green':
		case 'branch':
		case 'accent':
		case 'plant':
		case 'string':
			return pieceMinutes[piece]
		case 'cluster to make':
			return total([pieceMinutes.clusterToMake, pieceMinutes.accent])
		case 'cluster kept':
			return pieceMinutes.accent
		case 'none':
			return 0
		default:
			return piece satisfies never
	}
}

/** Setting each piece, making clusters, and for what is lent: back, cleaned and stored. */
function lineWork(line: JobLine, rates: Rates): Work | null {
	const pieces = product(line.count, line.piecesPerUnit)
	const each = total([perPiece(line, rates), line.holding === 'lent' ? rates.pieceMinutes.lentBack : 0])
	const minutes = product(pieces, each)
	return minutes === 0 ? null : { what: line.name, minutes, how: `${pieces} × ${each} min` }
}

const isSome = <T>(value: T | null): value is T => value !== null

const linesWork = (lines: readonly JobLine[], rates: Rates) => lines.map((line) => lineWork(line, rates)).filter(isSome)

function cleanOut({ openingCm2, isNew }: JobContainer, quarter: Quarter, rates: Rates): Work | null {
	if (isNew) return null
	const { cleanOutPer1000Cm2: per1000, cleanOutAfterSummer: after } = rates.containerMinutes
	const factor = quarter === 'autumn' ? after : 1
	const exact = thousandths(openingCm2) * thousandths(per1000) * thousandths(factor)
	const minutes = Number(divideHalfUp(exact, 1_000_000_000n)) / 1000
	const how = `${openingCm2} cm² × ${per1000} min ÷ 1000${factor === 1 ? '' : ` × ${factor} after summer`}`
	return minutes === 0 ? null : { what: 'past season out', minutes, how }
}

/** Cut evergreens are sprayed against drying; nothing else is. */
const isSprayed = ({ lines }: JobContainer) => lines.some(({ kind, piece }) => kind === 'fresh' && piece === 'green')

/** All work at one container, each thing once. */
export function containerWork(container: JobContainer, { quarter, rates }: Pick<Job, 'quarter' | 'rates'>): Work[] {
	const { base, prep, waterAndTidy, spray } = rates.containerMinutes
	const plain = (what: string, minutes: number): Work => ({
		what,
		minutes,
		how: `${minutes} min`,
	})
	const fixed = [plain('base', base), plain('studio prep', prep), plain('water and tidy', waterAndTidy)]
	const sprayed = isSprayed(container) ? [plain('spray', spray)] : []
	const out = cleanOut(container, quarter, rates)
	return [...fixed, ...sprayed, ...(out ? [out] : []), ...linesWork(container.lines, rates)]
}

export function extraWork(extra: JobExtra, rates: Rates): Work[] {
	const own =
		extra.minutes > 0
			? [
					{
						what: extra.name,
						minutes: extra.minutes,
						how: `${extra.minutes} min`,
					},
				]
			: []
	return [...own, ...linesWork(extra.lines, rates)]
}

export function takeDownWork(container: JobContainer, rates: Rates): Work {
	const minutes = rates.containerMinutes.takeDown
	return {
		what: `${container.name} taken down`,
		minutes,
		how: `${minutes} min`,
	}
}

/** There and back for the whole crew, shared by the stops of the day. */
export function driveWork({ driveMinutes }: JobVisit, { crew, stopsADay }: Rates): Work {
	const minutes = Number(divideHalfUp(thousandths(driveMinutes) * 2n * BigInt(crew), BigInt(stopsADay))) / 1000
	return {
		what: 'drive',
		minutes,
		how: `2 × ${driveMinutes} min × crew of ${crew} ÷ ${stopsADay} stops`,
	}
}

export function stopWork({ visitMinutes: { setUp, load } }: Rates): Work[] {
	return [
		{ what: 'set-up', minutes: setUp, how: `${setUp} min` },
		{ what: 'load and unload', minutes: load, how: `${load} min` },
	]
}

export const minutesOf = (work: readonly Work[]): number => total(work.map(({ minutes }) => minutes))
