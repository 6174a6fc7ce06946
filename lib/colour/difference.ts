import { convertRgbToLab65, differenceCiede2000 } from 'culori'
import type { Hex } from '../units/hex'
import { rgbOf } from './rgb'

/** CIE L*a*b* relative to D65. */
export type Lab = { readonly mode: 'lab65'; readonly l: number; readonly a: number; readonly b: number }

/**
 * Lab of a screen's colour. The white is D65, sRGB's own, so that nothing is adapted on the way; the `lab()` of CSS is
 * of D50 and gives other differences: over the pairs of a ColorChecker by 2 % in the mean and by a sixth at most.
 */
export const labOf = (of: Hex): Lab => convertRgbToLab65(rgbOf(of))

/**
 * CIEDE2000 with kL = kC = kH = 1. The formula knows no white point: it takes two Labs of the same one.
 * Source: Sharma, Wu and Dalal, Color Research & Application 30(1), 2005.
 */
export const labDifference: (a: Lab, b: Lab) => number = differenceCiede2000()

/** ΔE00 of two screen colours: 0 is the same, 1 hardly seen, 15 plainly another colour, 100 black to white. */
export const difference = (a: Hex, b: Hex): number => labDifference(labOf(a), labOf(b))

/** The most that the formula weighs a difference of lightness down: S_L at L* 0 or 100. */
const mostSl = 1 + (0.015 * 50 ** 2) / Math.sqrt(20 + 50 ** 2)

/** Whether ΔE00 is at most `most`; where lightness alone says no, the rest is not worked out. */
export const isWithin = (a: Lab, b: Lab, most: number): boolean =>
	Math.abs(a.l - b.l) <= most * mostSl && labDifference(a, b) <= most
