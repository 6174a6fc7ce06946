import type { ClientPage } from '@/db/clients/read-clients'
import { usualHeadspaceCm, usualWallCm } from '@/lib/container/card'
import type { LengthUnit } from '@/lib/format/length'
import { typedWeight, weightUnlessChanged } from '@/lib/format/read-weight'
import { typedLength, unlessChanged } from '@/lib/format/typed-length'
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

const inUnit = (cm: number | null, unit: LengthUnit) => (cm === null ? '' : typedLength(cm, unit))

/** A kept card as the form shows it, measures in the studio's units; what is usual stays empty, as the form has it. */
export function cardText(card: Card | undefined, unit: LengthUnit): Typed {
	if (card === undefined) return { colour: '#3a3d40', hasDrainHole: 'on' }
	const { wall, wallCm, headspaceCm } = card
	return {
		...Object.fromEntries(lengths.map((name) => [name, inUnit(card[name], unit)])),
		...(wallCm === usualWallCm[wall] && { wallCm: '' }),
		...(headspaceCm === usualHeadspaceCm && { headspaceCm: '' }),
		...Object.fromEntries(words.map((name) => [name, card[name]])),
		...Object.fromEntries(ticks.map((name) => [name, card[name] ? 'on' : ''])),
		vesselKg: card.vesselKg === null ? '' : typedWeight(card.vesselKg, unit),
	}
}

type Measures = { readonly [Name in (typeof lengths)[number] | 'vesselKg']: number | null }

/** The measures of a form that came back: what was not changed stays as it was kept. */
export function keptMeasures<T extends Measures>(fields: T, card: Card | undefined, unit: LengthUnit): T {
	if (card === undefined) return fields
	return {
		...fields,
		...Object.fromEntries(lengths.map((name) => [name, unlessChanged(fields[name], card[name], unit)])),
		vesselKg: weightUnlessChanged(fields.vesselKg, card.vesselKg, unit),
	}
}
