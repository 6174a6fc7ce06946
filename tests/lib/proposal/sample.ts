import { moneyFormat } from '@/lib/format/money'
import { defaultRates } from '@/lib/pricing/rates'
import type { Draft, DraftExtra, DraftLine, DraftOption } from '@/lib/proposal/draft'
import type { Card, Facts, Material, Site } from '@/lib/proposal/facts'
import { type Made, makeOffer } from '@/lib/proposal/make'
import type { Offer } from '@/lib/proposal/offer/offer'
import type { Kind, Piece, Role, Unit } from '@/lib/recipe/material'
import { cents } from '@/lib/units/cents'
import { day } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { id, type MaterialId } from '@/lib/units/id'
import { containerId, placeId } from '../pricing/sample'

/** A small proposal of two doors, three containers, two palettes and two extras; every value differs from its neighbours. */
export { containerId, placeId }
export const money = moneyFormat('USD')
export const today = day('2026-10-05')

export const materialId = (n: number): MaterialId =>
	id<'material'>(`00000000-0000-7000-8000-00000000b${String(n).padStart(3, '0')}`)

const plainTraits = {
	form: 'short needle',
	secondHex: null,
	lengthCm: 43,
	acrossCm: 19,
	had: [10, 11],
	lasts: [11, 12, 1],
	zone: null,
	wants: [],
	spacingCm: null,
	rootBallLitres: null,
	kgEach: 0.13,
	watts: null,
	mostEndToEnd: null,
	regulated: '',
	inStock: 0,
	isRetired: false,
} as const satisfies Partial<Material>

function material(
	n: number,
	name: string,
	kind: Kind,
	piece: Piece,
	unit: Unit,
	packCents: number,
	size: number,
): Material {
	return {
		id: materialId(n),
		name,
		kind,
		piece,
		unit,
		role: piece === 'branch' ? 'thriller' : piece === 'green' ? 'filler' : 'accent',
		piecesPerUnit: 1,
		...plainTraits,
		hex: hex(`#${String(n).repeat(6)}`),
		hazards: [],
		pack: { size, cents: cents(packCents), freightPercent: 0 },
		usesBefore: 0,
		onlyHere: false,
	}
}

export const materials: readonly Material[] = [
	material(1, 'birch', 'fresh', 'branch', 'stem', 1841, 10),
	{ ...material(2, 'noble fir', 'fresh', 'green', 'kg', 2933, 9), piecesPerUnit: 22 },
	material(3, 'copper globes', 'ornament', 'accent', 'piece', 5417, 6),
	{
		...material(4, 'holly', 'fresh', 'green', 'stem', 1567, 12),
		hazards: ['poisonous to people', 'poisonous to pets'],
	},
	material(5, 'warm lights', 'light', 'string', 'string', 2459, 1),
	material(6, 'stakes', 'mechanics', 'none', 'piece', 991, 25),
	{ ...material(7, 'cone picks', 'faux', 'accent', 'piece', 1373, 8), hazards: ['small parts'] },
]

export const typed = (n: number, role: Role, value: number, holding: DraftLine['holding'] = 'sold'): DraftLine => ({
	material: materialId(n),
	role,
	holding,
	count: { way: 'typed', value },
})

export function card(n: number, name: string, more: Partial<Card> = {}): Card {
	return {
		id: containerId(n),
		place: placeId(1),
		name,
		shape: 'round',
		topCm: 45.72,
		topDepthCm: null,
		bottomCm: 30.48,
		bottomDepthCm: null,
		heightCm: 50.8,
		wallCm: 1,
		headspaceCm: 5,
		soilDepthCm: null,
		colour: hex('#3a3d40'),
		wall: 'resin',
		stands: 'all round',
		light: 'part',
		isWindy: false,
		isUnderEave: false,
		hasRoadSalt: false,
		sillToGlassCm: null,
		vesselKg: null,
		limitedWeight: 'none',
		outletNear: true,
		walkLeftCm: null,
		...more,
	}
}

const site = (n: number, name: string, taxMilliPercent: number, driveMinutes: number, wall: string): Site => ({
	id: placeId(n),
	name,
	address: `${n} Quay Lane`,
	wall: { kind: n === 1 ? 'clapboard' : 'brick', hex: hex(wall) },
	door: n === 1 ? hex('#24365a') : null,
	zone: 5.5,
	taxMilliPercent,
	driveMinutes,
	zoneCents: null,
})

export const facts: Facts = {
	proposal: id<'proposal'>('00000000-0000-7000-8000-00000000d001'),
	studio: { name: 'Two Steps Up', currency: 'USD', lengths: 'in' },
	designer: 'Mara',
	season: { quarter: 'winter', year: 2026 },
	customer: { name: 'Ninefold Bakery', kind: 'business', netDays: 30, exempt: null },
	sites: [site(1, 'Front door', 6000, 14, '#5f7488'), site(2, 'Side door', 7250, 23, '#8f4a28')],
	cards: [
		card(1, 'Left urn', { shape: 'urn', topCm: 40.64 }),
		card(2, 'Right urn'),
		card(3, 'Long box', {
			place: placeId(2),
			shape: 'window box',
			topCm: 91.44,
			topDepthCm: 20.32,
			bottomCm: 86.36,
			bottomDepthCm: 17.78,
			heightCm: 22.86,
		}),
	],
	hasApprover: true,
	materials: new Map(materials.map((each) => [each.id, each])),
	ratesVersion: 7,
	rates: defaultRates,
}

const option = (key: string, name: string, colour: string, more: Partial<DraftOption> = {}): DraftOption => ({
	key,
	name,
	palette: [{ name: `${name} one`, hex: hex(colour), echoes: 'echoes your pans' }],
	pots: [
		{ container: containerId(1), lines: [typed(1, 'thriller', 12), typed(2, 'filler', 1.25)] },
		{ container: containerId(2), lines: [typed(1, 'thriller', 11), typed(3, 'accent', 3, 'lent')] },
		{ container: containerId(3), lines: [typed(4, 'spiller', 14), typed(6, 'mechanics', 5)] },
	],
	supplementCents: cents(0),
	...more,
})

const extra = (key: string, name: string, place: number, minutes: number, lines: DraftLine[]): DraftExtra => ({
	key,
	name,
	words: `${name}, hung by us`,
	place: placeId(place),
	minutes,
	lines,
})

export const draft: Draft = {
	v: 1,
	title: 'Winter at the bakery',
	letter: 'Dear Ada,\n\nbirch and copper this year.',
	window: { from: day('2026-11-16'), to: day('2026-11-20') },
	answerBy: day('2026-10-30'),
	design: 'new',
	takeDown: false,
	containers: [
		{ id: containerId(1), mayLeaveOut: false, isNew: false },
		{ id: containerId(2), mayLeaveOut: true, isNew: false },
		{ id: containerId(3), mayLeaveOut: true, isNew: true },
	],
	options: [
		option('a', 'Copper and plum', '#b4643a'),
		option('b', 'Brass and navy', '#bb9346', {
			pots: [
				{ container: containerId(1), lines: [typed(1, 'thriller', 9), typed(2, 'filler', 2)] },
				{ container: containerId(2), lines: [typed(1, 'thriller', 8), typed(2, 'filler', 1.5)] },
				{ container: containerId(3), lines: [typed(2, 'spiller', 2.5)] },
			],
		}),
	],
	extras: [
		extra('wreath', 'Wreath', 1, 12.5, [typed(7, 'accent', 4)]),
		extra('lights', 'String of lights', 2, 9, [typed(5, 'accent', 2, 'lent')]),
	],
	agreement: { is: 'none' },
	overruled: [],
}

export const made = (of: Draft = draft, by: Facts = facts, number = 2): Made => makeOffer(of, by, money, number, today)
export const offerOf = (of?: Draft, by?: Facts, number?: number): Offer => made(of, by, number).offer

/** The first of a list, which is there. */
export function first<T>(of: readonly T[]): T {
	const [found] = of
	if (found === undefined) throw new Error('first: there is none')
	return found
}
