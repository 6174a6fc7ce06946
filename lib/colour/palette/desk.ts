import { type DesignMaterial, isAtHand, type Month } from '../../recipe/traits'
import type { Hex } from '../../units/hex'
import { type Lab, labDifference, labOf } from '../difference'
import { isGreen, isSeen } from '../is-seen'
import { type Oklch, oklchOf } from '../name-of'
import { inOrder } from '../ranked'
import type { PaletteAsk } from './palette'

/** A material with its colour worked out once. */
export type Known = {
	readonly material: DesignMaterial
	readonly lab: Lab
	readonly oklch: Oklch
	/** ΔE00 from each target of the desk, in order. */
	readonly fromTargets: readonly number[]
}

/** A colour of the building that a palette may echo. */
export type Target = { readonly name: string; readonly hex: Hex; readonly lab: Lab; readonly isInside: boolean }

/** What is asked, laid out: usable materials, what to echo, what to show against. */
export type Desk = {
	readonly usable: readonly Known[]
	readonly greens: readonly Known[]
	readonly targets: readonly Target[]
	readonly wall: Lab
	readonly ask: PaletteAsk
}

/** To be had or in storage, and well outside in that month; a card that names no month is not asked. */
const isUsable = (material: DesignMaterial, month: Month): boolean =>
	isAtHand(material, month) && (material.lasts.length === 0 || material.lasts.includes(month))

/** ΔE00 under which two site colours are one, as in a photo. */
const sameTarget = 5

function targetsOf({ site, door }: PaletteAsk): Target[] {
	const seen = site.map(({ name, hex, side }) => ({ name, hex, lab: labOf(hex), isInside: side === 'inside' }))
	if (door === null) return seen
	const lab = labOf(door)
	const isListed = seen.some((target) => labDifference(target.lab, lab) < sameTarget)
	return isListed ? seen : [...seen, { name: 'door', hex: door, lab, isInside: false }]
}

export function deskOf(ask: PaletteAsk): Desk {
	const targets = targetsOf(ask)
	const usable = ask.materials
		.filter((material) => material.role !== 'mechanics' && isSeen(material) && isUsable(material, ask.month))
		.toSorted((a, b) => (a.id < b.id ? -1 : 1))
		.map((material) => {
			const lab = labOf(material.hex)
			const fromTargets = targets.map((target) => labDifference(target.lab, lab))
			return { material, lab, oklch: oklchOf(material.hex), fromTargets }
		})
	const greens = usable.filter(({ material }) => isGreen(material))
	return { usable, greens, targets, wall: labOf(ask.wall.hex), ask }
}

export type Near = { readonly known: Known; readonly difference: number }

/** First those of exactly the colour, then by steps of nearness, stock first. */
export function nearestFirst(near: readonly Near[]): Near[] {
	const byId = new Map(near.map((each) => [each.known.material.id, each]))
	const order = inOrder(near.map(({ known: { material }, difference }) => ({ material, difference })))
	const sorted = order.flatMap(({ material }) => byId.get(material.id) ?? [])
	const isExact = ({ difference }: Near) => difference < 1e-6
	return [...sorted.filter(isExact), ...sorted.filter((each) => !isExact(each))]
}
