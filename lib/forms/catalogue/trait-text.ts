import type { z } from 'zod'
import { fromCm, type LengthUnit } from '../../format/length'
import type { Typed } from '../read'
import { zoneText } from '../zone-field'
import type { traitFields } from './trait-fields'

type Fields = ReturnType<typeof traitFields>
export type TraitValues = { readonly [Name in keyof Fields]: z.output<Fields[Name]> }

const text = (value: number | null) => (value === null ? '' : String(value))

/** Of a material that nobody has described: it is to be had, and does well, all year. */
const unknown: Typed = { form: 'short needle', needs: 'any', hadFrom: '1', hadTo: '12', lastsFrom: '1', lastsTo: '12' }

/** The traits as the card of a material shows them; `traitFields` reads them back. */
export function traitText(traits: TraitValues | null, unit: LengthUnit): Typed {
	if (traits === null) return unknown
	const length = (cm: number | null) => (cm === null ? '' : text(fromCm(cm, unit)))
	const { lengthCm, acrossCm, spacingCm, secondHex, zone, form, needs, regulated, ...numbers } = traits
	const counted = Object.fromEntries(Object.entries(numbers).map(([name, value]) => [name, text(value)]))
	const measured = { lengthCm: length(lengthCm), acrossCm: length(acrossCm), spacingCm: length(spacingCm) }
	return { form, needs, regulated, secondHex: secondHex ?? '', zone: zoneText(zone), ...measured, ...counted }
}
