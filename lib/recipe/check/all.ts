import { merged, type Planned } from '../planned'
import { height } from './body/height'
import { hold } from './body/hold'
import { weight } from './body/weight'
import { wind } from './body/wind'
import { type Finding, finding } from './finding'
import { lights } from './lights'
import { oneGreen } from './one-green'
import { hardiness } from './plants/hardiness'
import { hazards } from './plants/hazards'
import { light } from './plants/light'
import { months } from './plants/months'
import { regulated } from './plants/regulated'
import { rootBalls } from './plants/root-balls'
import type { Check, Setting } from './setting'
import { thinFill } from './thin-fill'
import { unknown } from './unknown'

const checks: readonly Check[] = [
	height,
	hold,
	thinFill,
	oneGreen,
	rootBalls,
	light,
	hardiness,
	months,
	weight,
	wind,
	lights,
	hazards,
	regulated,
	unknown,
]

const empty = finding(
	'empty',
	'look again',
	'Nothing is in this pot yet.',
	'Apply a recipe, or add materials one by one.',
)

const first = (findings: readonly Finding[]): Finding[] =>
	findings.filter(({ key }, at) => findings.findIndex((other) => other.key === key) === at)

/**
 * What every check finds in one pot, what weighs most first, each key once. `others` are found elsewhere: colours lost
 * against the wall or in the greens, last year's palette, the neighbour's.
 */
export function all(lines: readonly Planned[], setting: Setting, others: readonly Finding[] = []): Finding[] {
	const whole = merged(lines)
	const found = whole.length === 0 ? [empty] : checks.flatMap((check) => check(whole, setting))
	const once = first([...found, ...others])
	return (['look again', 'caution'] as const).flatMap((weight) => once.filter((each) => each.weight === weight))
}
