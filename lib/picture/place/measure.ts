import { cmPerInch } from '../../format/length'
import { n } from '../pen/n'
import { line, rect } from '../pen/path'
import type { Scene } from '../scene'
import type { Stood } from './stood'

/** Ticks in a unit: how long it is in cm, how often there is a short one, a long one with its figure. */
const units = { cm: { cm: 1, small: 10, large: 50 }, in: { cm: cmPerInch, small: 6, large: 12 } } as const

/** A staff beside the first pot, from the ground to over the highest tip, with its figures. */
export function measure(stood: readonly Stood[], unit: Scene['measure'], left: number): string {
	const standing = stood.filter(({ isHung }) => !isHung)
	const of = standing.length > 0 ? standing : stood
	const [first] = of
	if (unit === 'none' || first === undefined) return ''
	const { cm, small, large } = units[unit]
	const foot = first.isHung ? 0 : first.y
	const tall = Math.max(...of.map(({ y, body, tip }) => foot - (y - body.height - tip)))
	const count = Math.max(1, Math.ceil(tall / (cm * small)))
	const x = Math.max(left + 7, first.x - first.elbow - 12)
	const high = count * small * cm
	const ticks = Array.from({ length: count + 1 }, (_, index) => {
		const isLarge = (index * small) % large === 0
		return `M${n(x + 2)} ${n(foot - index * small * cm)}h${isLarge ? 6 : 3.4}`
	}).join('')
	const figures = Array.from({ length: Math.floor((count * small) / large) }, (_, index) => {
		const value = (index + 1) * large
		return `<text x="${n(x + 9.8)}" y="${n(foot - value * cm + 2.7)}">${value}</text>`
	}).join('')
	return (
		rect(x - 1.6, foot - high - 2, 3.6, high + 2, '#14241d', ' rx=".8"') +
		rect(x - 0.9, foot - high - 1.3, 2.2, high + 1.3, '#f4f7f2', ' rx=".4"') +
		line(ticks, '#14241d', 1.7, 0.55) +
		line(ticks, '#f4f7f2', 0.9) +
		`<g font-family="sans-serif" font-size="7.6" font-weight="600" fill="#14241d" stroke="#f4f7f2" stroke-width="2.4" stroke-linejoin="round" paint-order="stroke">${figures}<text x="${n(x + 9.8)}" y="${n(foot + 2.7)}">${unit}</text></g>`
	)
}
