import { lights } from '../../container/card'
import type { LengthUnit } from '../../format/length'
import type { Quarter } from '../../season/season'
import { usualInstallMonth } from '../almanac/months'
import { all } from '../check/all'
import type { Finding } from '../check/finding'
import { light } from '../check/plants/light'
import { type Setting, usualCircuit } from '../check/setting'
import type { Planned } from '../planned'
import { pots } from './pots'

/** A place that asks nothing: what depends on the place is told when the recipe stands in one. */
const place = { isWindy: false, isUnderEave: false, hasRoadSalt: false, sillToGlassCm: null, outletNear: true } as const
const unlimited = { limitedWeight: 'none', vesselKg: null, wall: 'resin' } as const
/** The mildest zone of the USDA map. */
const mildest = 13.5

function settings(quarter: Quarter, lengths: LengthUnit): Setting[] {
	const when = { quarter, month: usualInstallMonth(quarter), zone: mildest, circuit: usualCircuit, daysHung: null }
	return lights.map((each) => ({ pot: { ...pots.reference, ...place, ...unlimited, light: each }, ...when, lengths }))
}

/** What the checks say of a recipe in the container that it is written for, in the light that suits most of its plants. */
export function inReference(lines: readonly Planned[], quarter: Quarter, lengths: LengthUnit): Finding[] {
	const complaints = (setting: Setting) => light(lines, setting).length
	const [best] = settings(quarter, lengths).toSorted((a, b) => complaints(a) - complaints(b))
	return best === undefined ? [] : all(lines, best)
}
