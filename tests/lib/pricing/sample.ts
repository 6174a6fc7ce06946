import type { Job, JobContainer, JobExtra, JobLine, JobVisit } from '@/lib/pricing/job'
import { defaultRates } from '@/lib/pricing/rates'
import type { Kind, Piece } from '@/lib/recipe/material'
import { cents } from '@/lib/units/cents'
import { type ContainerId, id, type PlaceId } from '@/lib/units/id'

/** Small well-formed jobs for the pricing tests; every value differs from its neighbours. */
export const words = { money: (amount: number) => `$${(amount / 100).toFixed(2)}` }

export const placeId = (n: number): PlaceId =>
	id<'place'>(`00000000-0000-7000-8000-00000000a${String(n).padStart(3, '0')}`)
export const containerId = (n: number): ContainerId =>
	id<'container'>(`00000000-0000-7000-8000-00000000c${String(n).padStart(3, '0')}`)

export function line(
	name: string,
	kind: Kind,
	piece: Piece,
	count: number,
	packCents: number,
	packSize: number,
	more: Partial<JobLine> = {},
): JobLine {
	const pack = { size: packSize, cents: cents(packCents), freightPercent: 0 }
	const rest = { piecesPerUnit: 1, holding: 'sold', usesBefore: 0, onlyHere: false } as const
	return { name, unit: kind === 'fresh' ? 'stem' : 'piece', kind, piece, count, pack, ...rest, ...more }
}

/** The 18-inch pot of the trade's sanity check: 12 stems, 20 greens, 9 spillers, 3 clusters. */
export const potOf18: JobLine[] = [
	line('birch', 'fresh', 'branch', 12, 1840, 10),
	line('noble fir', 'fresh', 'green', 20, 1275, 25),
	line('cedar', 'fresh', 'green', 9, 1160, 20),
	line('copper globes', 'ornament', 'cluster to make', 3, 5400, 6, { holding: 'lent' }),
]

export function container(n: number, more: Partial<JobContainer> = {}): JobContainer {
	return {
		id: containerId(n),
		place: placeId(1),
		name: `pot ${n}`,
		openingCm2: 1642,
		soilL: 58,
		isNew: false,
		lines: potOf18,
		...more,
	}
}

/** Labour alone: 31 minutes, 31.00, shown as 35.00. */
export const bare = (n: number, more: Partial<JobContainer> = {}): JobContainer =>
	container(n, { openingCm2: 1000, lines: [], ...more })

export const extra = (key: string, more: Partial<JobExtra> = {}): JobExtra => ({
	key,
	place: placeId(1),
	name: `extra ${key}`,
	minutes: 12,
	lines: [],
	...more,
})

/** Half an hour there and back: travel is 55 minutes, 55.00. */
export const visit = (n: number, more: Partial<JobVisit> = {}): JobVisit => ({
	place: placeId(n),
	name: `door ${n}`,
	taxMilliPercent: 6000,
	driveMinutes: 15,
	zoneCents: null,
	takeDown: false,
	...more,
})

export function job(more: Partial<Job> = {}): Job {
	return {
		currency: 'USD',
		ratesVersion: 3,
		rates: defaultRates,
		quarter: 'winter',
		payer: { kind: 'business', netDays: 30, exemptCertificate: null },
		agreement: { is: 'none' },
		supplementCents: cents(0),
		design: 'new',
		visits: [
			{ place: placeId(1), name: 'Quay', taxMilliPercent: 6000, driveMinutes: 14, zoneCents: null, takeDown: false },
		],
		containers: [container(1)],
		extras: [],
		...more,
	}
}
