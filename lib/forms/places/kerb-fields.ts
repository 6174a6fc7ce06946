import type { Typed } from '../read'

type Parts = Record<string, string | readonly string[]>

const boxOf = /^container\.(\d+)\.(.+)$/
const newOf = /^new\.(.+)$/

/** Numbers of the containers that a form has boxes of, in their order. */
export const containerNumbers = (typed: Typed): number[] => {
	const numbers = Object.keys(typed).map((name) => boxOf.exec(name)?.[1])
	return [...new Set(numbers.filter((each) => each !== undefined).map(Number))].toSorted((a, b) => a - b)
}

/** The boxes of one container, by what the card calls them. */
export function boxesOf(typed: Typed, number: number): Record<string, string> {
	const head = `container.${number}.`
	return Object.fromEntries(
		Object.entries(typed).flatMap(([name, value]) =>
			name.startsWith(head) && typeof value === 'string' ? [[name.slice(head.length), value]] : [],
		),
	)
}

/** The boxes of the page, each under its own name, as the parts that they are of; those of a new place only where it is one. */
export function kerbParts(typed: Typed): unknown {
	const made: Parts = {}
	const rest: Parts = {}
	const containers = new Map<string, Parts>()
	for (const [name, value] of Object.entries(typed)) {
		const [, number, box] = boxOf.exec(name) ?? []
		const own = newOf.exec(name)?.[1]
		if (number !== undefined && box !== undefined) containers.set(number, { ...containers.get(number), [box]: value })
		else if (own !== undefined) made[own] = value
		else rest[name] = value
	}
	const isNew = typed.place === '' && Object.keys(made).length > 0
	return { ...rest, container: Object.fromEntries(containers), ...(isNew && { new: made }) }
}
