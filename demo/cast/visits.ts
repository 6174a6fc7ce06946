import type { VisitKind } from '@/lib/visit/visit'
import type { ClientKey } from './clients'
import type { PersonKey } from './people'
import type { AutumnKey, WinterKey } from './proposals/proposals'
import type { PlaceKey } from './sites/places'

/** A drawing of ours stands in for a photo: the wall bare, or with what the season's design put before it. */
export type CastPhoto = {
	readonly side: 'before' | 'after' | 'wrong'
	readonly of: 'bare' | 'design'
	readonly cut: 'full' | 'panel'
	readonly hour: 'day' | 'evening'
}

/** When it was written down, in days from today, and on which day it was made or is to be. */
type When = { readonly on: number; readonly at: string; readonly day: number }
type Where =
	| { readonly season: 'autumn'; readonly client: AutumnKey; readonly place: PlaceKey }
	| { readonly season: 'winter'; readonly client: WinterKey; readonly place: PlaceKey }

export type CastVisit = When &
	Where & {
		readonly does: 'record' | 'plan'
		readonly kind: VisitKind
		readonly came: string
		readonly clientNote: string
		readonly studioNote: string
		readonly photos: readonly CastPhoto[]
	}

const photo = (side: CastPhoto['side'], of: CastPhoto['of'], more: Partial<CastPhoto> = {}): CastPhoto => ({
	side,
	of,
	cut: 'full',
	hour: 'day',
	...more,
})

/** What was done at the doors, by what it is to the story. */
export const visits = {
	bakeryInstall: {
		...{ season: 'autumn', client: 'bakery', place: 'bakery', does: 'record', kind: 'install' },
		...{ on: -22, at: '19:45', day: -22, came: 'Isolde and Tobin' },
		clientNote: 'Both pots and the box are in. The left one stands in the draught: give it a cup more on dry days.',
		studioNote: 'The drain hole of the right pot was blocked with mortar. Bring the long drill next time.',
		photos: [photo('before', 'bare'), photo('after', 'design')],
	},
	bakeryRefresh: {
		...{ season: 'autumn', client: 'bakery', place: 'bakery', does: 'record', kind: 'refresh' },
		...{ on: -8, at: '15:20', day: -8, came: 'Tobin' },
		clientNote: 'Two heads of wheat had snapped and were changed. Everything is watered.',
		studioNote: 'Twenty minutes. Van parked at the fish market.',
		photos: [photo('after', 'design', { cut: 'panel' })],
	},
	innInstall: {
		...{ season: 'autumn', client: 'inn', place: 'inn', does: 'record', kind: 'install' },
		...{ on: -21, at: '20:10', day: -21, came: 'Isolde and Tobin' },
		clientNote: 'The urns are wired to the rail, so that the wind leaves them where they are.',
		studioNote: 'Corwin asked for taller before we had left the steps.',
		photos: [],
	},
	installedInstall: {
		...{ season: 'winter', client: 'installed', place: 'installed', does: 'record', kind: 'install' },
		...{ on: -3, at: '19:40', day: -3, came: 'Isolde' },
		clientNote: 'In before anybody else in the street. No water until it thaws.',
		studioNote: 'Balcony box sits on the rail, weight checked with the bracket’s maker.',
		photos: [photo('after', 'design')],
	},
	dentalWatering: {
		...{ season: 'autumn', client: 'dental', place: 'dental', does: 'plan', kind: 'watering' },
		...{ on: -2, at: '16:30', day: 2, came: 'Tobin' },
		clientNote: '',
		studioNote: 'Take the long can, the tap in the alley is off.',
		photos: [],
	},
} as const satisfies Record<string, CastVisit>

export type CastReport = {
	readonly on: number
	readonly at: string
	readonly client: ClientKey & WinterKey
	readonly place: PlaceKey
	readonly by: PersonKey
	readonly words: string
	readonly photos: readonly CastPhoto[]
}

/** What clients said is wrong, not planned yet. */
export const reports = {
	globe: {
		...{ on: -1, at: '18:20', client: 'installed', place: 'installed', by: 'installedApprover' },
		words: 'One of the globes in the corner planter has come off its stake and is broken. The rest holds.',
		photos: [photo('wrong', 'design', { cut: 'panel' })],
	},
} as const satisfies Record<string, CastReport>

export type RoundKey = keyof typeof visits | keyof typeof reports
