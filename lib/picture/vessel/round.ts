import { linear } from '../pen/gradient'
import { clamp } from '../pen/n'
import { fill, line } from '../pen/path'
import type { Pen } from '../pen/pen'
import type { Body } from './body'
import type { Drawn } from './drawn'
import { type Finish, finishOf } from './finish'
import { nearRim, roundOpening } from './opening'
import { ribs } from './ribs'
import { frontArc, halfAt, type Profile, profileOf, sideBetween } from './round-side'
import { speckle } from './speckle'
import { staves } from './staves'

/** Height of the band under the rim, and how far the side stands back from it, in cm. */
function bandOf({ madeOf, shape, height, top }: Body): { high: number; inset: number } {
	if (shape === 'urn') return { high: 0, inset: 0 }
	if (shape === 'bowl') return { high: clamp(height * 0.1, 1.5, 3.5), inset: 0.7 }
	if (madeOf === 'terracotta') return { high: clamp(height * 0.18, 3, 9), inset: clamp(top * 0.06, 0.8, 1.8) }
	if (madeOf === 'metal') return { high: clamp(height * 0.05, 1.4, 2.6), inset: 0.5 }
	if (madeOf === 'wood') return { high: 0, inset: 0 }
	return { high: clamp(height * 0.1, 2.5, 5.5), inset: clamp(top * 0.035, 0.6, 1.2) }
}

/** The plants' own shade falls on the upper side, the ground's on the foot. */
function shadeOn(profile: Profile, height: number, { defs }: Pen): string {
	const falls = linear(defs, 'down', [
		[0, 'black', 0.3],
		[0.26, 'black', 0],
		[0.72, 'black', 0],
		[1, 'black', 0.26],
	])
	return fill(sideBetween(profile, 0, height), falls)
}

function band(body: Body, profile: Profile, finish: Finish): string {
	const { high } = bandOf(body)
	if (high === 0) return ''
	const from = body.height - high
	const half = halfAt(profile, from)
	return (
		line(frontArc(half, -from + 0.9), finish.plain(-0.22), 1.6, 0.6) +
		fill(
			sideBetween(
				[
					[body.top, from],
					[body.top, body.height],
				],
				from,
				body.height,
			),
			finish.side(0.03),
		) +
		line(frontArc(body.top, -from - 0.25), finish.plain(0.1), 0.45, 0.55)
	)
}

/** Lines where an urn's members meet. */
const members = (profile: Profile, height: number, finish: Finish): string =>
	[0.06, 0.275, 0.32, 0.9, 0.965]
		.map((share) => {
			const half = halfAt(profile, height * share)
			const y = -height * share
			return (
				line(frontArc(half, y), finish.plain(-0.16), 0.7, 0.7) +
				line(frontArc(half, y - 0.6), finish.plain(0.1), 0.5, 0.6)
			)
		})
		.join('')

function work(body: Body, profile: Profile, finish: Finish, pen: Pen): string {
	if (body.madeOf === 'wood' && body.shape !== 'urn') return staves(body, profile, finish)
	const stone =
		body.madeOf === 'cast stone' ? fill(sideBetween(profile, 0, body.height), speckle(body.colour, pen)) : ''
	if (body.shape === 'urn') return stone + ribs(body, profile, finish) + members(profile, body.height, finish)
	return stone
}

export function round(body: Body, pen: Pen): Drawn {
	const finish = finishOf(body.madeOf, body.colour, true, pen)
	const profile = profileOf({ ...body, top: body.top - bandOf(body).inset })
	const side = fill(sideBetween(profile, 0, body.height), finish.side())
	const front =
		side +
		work(body, profile, finish, pen) +
		shadeOn(profile, body.height, pen) +
		band(body, profile, finish) +
		nearRim(body, finish)
	return { back: roundOpening(body, finish, pen), front }
}
