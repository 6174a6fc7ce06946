import type { Hex } from '../units/hex'
import type { Role } from './material'

/** What a piece looks like as it stands: decides how it is drawn, never what it costs. */
export const forms = [
	'straight stems',
	'twisting stems',
	'arching stems',
	'logs',
	'evergreen top',
	'grass',
	'sword leaves',
	'flower spike',
	'flat fan',
	'long needle',
	'short needle',
	'scale leaf',
	'broad leaf',
	'small leaf',
	'trailing',
	'berries',
	'cone',
	'pod',
	'seed head',
	'plume',
	'globe',
	'cluster',
	'ribbon',
	'pumpkin',
	'round flowers',
	'daisy flowers',
	'bulb flowers',
	'rosette',
	'foliage',
	'fern',
	'lights',
	'unseen',
] as const
export type Form = (typeof forms)[number]

const usual: Readonly<Record<Role, Form>> = {
	thriller: 'straight stems',
	filler: 'short needle',
	spiller: 'trailing',
	accent: 'globe',
	mechanics: 'unseen',
}

/** What a material of which nobody has said what it looks like is drawn as. */
export const usualForm = (role: Role): Form => usual[role]

/** How one piece of a material looks. */
export type Look = {
	readonly form: Form
	readonly hex: Hex
	/** The leaf under a flower, the leaf on a stem, the tape of a bow's edge; null where one colour is all. */
	readonly secondHex: Hex | null
	/** Of a stem as bought; of a live plant above the soil at the season's peak. */
	readonly lengthCm: number | null
	/** Spread of a plant or a tip, diameter of an ornament. */
	readonly acrossCm: number | null
}
