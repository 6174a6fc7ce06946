import type { ClientPage } from '@/db/clients/read-clients'
import { cmPerInch, type LengthUnit } from '@/lib/format/length'
import type { Typed } from '@/lib/forms/read'

type Card = ClientPage['places'][number]['containers'][number]

const lengths = [
	'topCm',
	'topDepthCm',
	'bottomCm',
	'bottomDepthCm',
	'heightCm',
	'wallCm',
	'headspaceCm',
	'soilDepthCm',
	'sillToGlassCm',
	'walkLeftCm',
] as const
const words = ['name', 'shape', 'wall', 'colour', 'owner', 'light', 'waterer', 'stands', 'limitedWeight'] as const
const ticks = ['hasLiner', 'hasDrainHole', 'isWindy', 'isUnderEave', 'hasRoadSalt', 'outletNear', 'hoseNear'] as const

const inUnit = (cm: number | null, unit: LengthUnit) =>
	cm === null ? '' : String(Math.round((unit === 'in' ? cm / cmPerInch : cm) * 1000) / 1000)

/** A kept card as the form shows it, measures in the studio's units. */
export function cardText(card: Card | undefined, unit: LengthUnit): Typed {
	if (card === undefined) return { colour: '#3a3d40', hasDrainHole: 'on' }
	return {
		...Object.fromEntries(lengths.map((name) => [name, inUnit(card[name], unit)])),
		...Object.fromEntries(words.map((name) => [name, card[name]])),
		...Object.fromEntries(ticks.map((name) => [name, card[name] ? 'on' : ''])),
		vesselKg: card.vesselKg === null ? '' : String(card.vesselKg),
	}
}
