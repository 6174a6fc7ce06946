import type { Hex } from '../../units/hex'
import { linear, radial } from '../pen/gradient'
import { clamp, n } from '../pen/n'
import { ellipse, fill } from '../pen/path'
import type { Pen } from '../pen/pen'
import { shade } from '../pen/shade'
import type { SceneLine, ScenePot } from '../scene'
import type { Body } from '../vessel/body'
import { accents, type SetAccent } from './accents'
import { type Bed, bedOf } from './bed'
import { seedOf } from './drawn-once'
import { greenCm, greens } from './greens'
import { type Habit, habitOf } from './habit'
import type { Hand } from './hand'
import { lights } from './lights'
import { mounds } from './mounds'
import { spillers } from './spillers'
import { byNearness, type Sprig, use } from './sprig'
import { roomFor } from './stock'
import { uprights } from './uprights'

/** What grows in a pot: behind its near rim, and over it. */
export type Planting = { readonly behind: string; readonly over: string }

/** The same whatever the order in which lines were written. */
const sorted = (lines: readonly SceneLine[]): SceneLine[] => {
	const key = (line: SceneLine) => `${seedOf(line)}/${line.hex}/${line.secondHex}/${line.count}`
	return lines.toSorted((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0))
}

/** How far the face of the planting stands from its middle, in cm: where accents and lights lie. */
function reachOf(lines: readonly SceneLine[], bed: Bed): number {
	const heights = lines.flatMap((line) => {
		const habit = habitOf(line)
		if (habit === 'fanned') return [greenCm(line, bed) * 0.62]
		if (habit === 'mound') return [clamp((line.lengthCm ?? bed.halfWidth) - bed.headspace, 4, 45) * 0.75]
		return []
	})
	if (heights.length === 0) return 4
	return heights.reduce((sum, height) => sum + height, 0) / heights.length
}

/** Shade in the depth of the planting, over what stands at the back. */
function depthOver(bed: Bed, reachCm: number, { defs }: Pen): string {
	const soft = radial(defs, [
		[0, 'black', 0.42],
		[0.5, 'black', 0.28],
		[1, 'black', 0],
	])
	return ellipse(0, bed.rimY + 1, bed.halfWidth * 0.95, reachCm * 0.9 + 2, soft)
}

/** Depth between the stems, so that the wall does not show through the middle. */
function core(lines: readonly SceneLine[], reachCm: number, { bed, isLit, pen: { defs, light } }: Hand): string {
	const leaf = lines.find((line) => habitOf(line) === 'fanned' || habitOf(line) === 'mound')
	if (leaf === undefined) return ''
	const colour: Hex = habitOf(leaf) === 'fanned' ? leaf.hex : (leaf.secondHex ?? leaf.hex)
	const deep = shade((isLit ? light.toneAmongLights : light.tone)(colour), -0.2, 0.7)
	const soft = linear(defs, 'down', [
		[0, deep, 0],
		[0.35, deep, 0.75],
		[1, deep, 0.95],
	])
	const { halfWidth, rimY } = bed
	const high = reachCm * 0.86 + 2
	const [foot, crown] = [rimY + 2, rimY - high]
	const d = `M${n(-halfWidth)} ${n(foot)}C${n(-halfWidth * 1.05)} ${n(crown)} ${n(-halfWidth * 0.6)} ${n(crown)} 0 ${n(crown)}S${n(halfWidth * 1.05)} ${n(crown)} ${n(halfWidth)} ${n(foot)}z`
	return fill(d, soft)
}

const shadowUnder = ({ x, y, turn, shadowCm }: SetAccent, dark: string): string => {
	if (shadowCm === 0) return ''
	const angle = (turn * Math.PI) / 180
	const [cx, cy] = [x + Math.sin(angle) * shadowCm, y - Math.cos(angle) * shadowCm]
	return ellipse(cx + shadowCm * 0.22, cy + shadowCm * 0.35, shadowCm * 1.28, shadowCm * 1.24, dark)
}

/** `which` tells twins apart: each is planted by hand. */
export function planting(pot: ScenePot, body: Body, which: number, pen: Pen): Planting {
	const bed = bedOf(pot, body)
	const lines = sorted(pot.lines)
	const of = (...habits: Habit[]) => lines.filter((line) => habits.includes(habitOf(line)))
	const isLit = pen.light.isEvening && of('lights').length > 0
	const hand: Hand = { bed, isLit, which, room: roomFor(lines.length), pen }
	const reachCm = reachOf(lines, bed)
	const uprightSprigs = of('upright').flatMap((line) => uprights(line, hand))
	const plants = of('mound')
	const sprigs: Sprig[] = [
		...greens(of('fanned', 'standing'), hand),
		...(plants.length === 0 ? [] : mounds(plants, uprightSprigs.length > 0, hand)),
		...of('hanging').flatMap((line) => spillers(line, hand)),
	].toSorted(byNearness)
	const dark = radial(pen.defs, [
		[0, 'black', 0.45],
		[0.6, 'black', 0.3],
		[1, 'black', 0],
	])
	const set = accents(of('set'), reachCm, hand).toSorted((a, b) => a.near - b.near)
	return {
		behind:
			uprightSprigs.toSorted(byNearness).map(use).join('') +
			core(lines, reachCm, hand) +
			sprigs
				.filter(({ isOver }) => !isOver)
				.map(use)
				.join('') +
			(sprigs.length === 0 ? '' : depthOver(bed, reachCm, pen)),
		over:
			sprigs
				.filter(({ isOver }) => isOver)
				.map(use)
				.join('') +
			set.map((each) => shadowUnder(each, dark) + use(each)).join('') +
			lights(of('lights'), reachCm, hand),
	}
}
