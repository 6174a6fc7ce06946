import type { Hex } from '../../units/hex'
import { hexOf, lchOf } from '../pen/shade'

/** Painted wood round doors and windows: off-white with a breath of the wall, greyer where the wall itself is pale. */
export function trimOf(wall: Hex): Hex {
	const { l, c } = lchOf(wall)
	return hexOf({ l: l > 0.84 ? 0.975 : 0.94, c: Math.min(c * 0.06, 0.006), h: 95 })
}

/** Stone of sills, steps and lintels. */
export function stoneOf(wall: Hex): Hex {
	const { h } = lchOf(wall)
	return hexOf({ l: 0.72, c: 0.01, h: h > 180 && h < 290 ? 230 : 85 })
}
