import type { z } from 'zod'
import type { LengthUnit } from '../../format/length'
import { typedWeight, weightUnlessChanged } from '../../format/read-weight'
import { typedLength, unlessChanged } from '../../format/typed-length'
import { zoneText } from '../places/zone-field'
import type { Typed } from '../read'
import type { traitFields } from './trait-fields'

type Fields = ReturnType<typeof traitFields>
export type TraitValues = { readonly [Name in keyof Fields]: z.output<Fields[Name]> }

const text = (value: number | null) => (value === null ? '' : String(value))

/** Of a material that nobody has described: it is to be had, and does well, all year. */
const unknown: Typed = { form: 'short needle', needs: 'any', hadFrom: '1', hadTo: '12', lastsFrom: '1', lastsTo: '12' }

/** The traits as the card of a material shows them; `traitFields` reads them back. */
export function traitText(traits: TraitValues | null, unit: LengthUnit): Typed {
	if (traits === null) return unknown
	const length = (cm: number | null) => (cm === null ? '' : typedLength(cm, unit))
	const { lengthCm, acrossCm, spacingCm, kgEach, secondHex, zone, form, needs, regulated, ...numbers } = traits
	const counted = Object.fromEntries(Object.entries(numbers).map(([name, value]) => [name, text(value)]))
	const measured = {
		lengthCm: length(lengthCm),
		acrossCm: length(acrossCm),
		spacingCm: length(spacingCm),
		kgEach: kgEach === null ? '' : typedWeight(kgEach, unit),
	}
	return { form, needs, regulated, secondHex: secondHex ?? '', zone: zoneText(zone), ...measured, ...counted }
}

type Lengths = Pick<TraitValues, 'lengthCm' | 'acrossCm' | 'spacingCm'>
type Measures = Lengths & Pick<TraitValues, 'kgEach'>

/** The lengths and the weight of a card that came back: what was not changed stays as it was kept. */
export function keptTraits<T extends Measures>(fields: T, kept: Measures | null, unit: LengthUnit): T {
	if (kept === null) return fields
	const length = (name: keyof Lengths) => unlessChanged(fields[name], kept[name], unit)
	return {
		...fields,
		lengthCm: length('lengthCm'),
		acrossCm: length('acrossCm'),
		spacingCm: length('spacingCm'),
		kgEach: weightUnlessChanged(fields.kgEach, kept.kgEach, unit),
	}
}
