/** Points along an outline, close enough to each other to measure it. */
export type Outline = { readonly points: (readonly [x: number, y: number])[]; isClosed: boolean }

type XY = readonly [x: number, y: number]

const steps = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((step) => step / 12)

function bezier(points: readonly XY[], t: number): XY {
	const [first = [0, 0]] = points
	if (points.length === 1) return first
	const next = points.slice(1).map(([x, y], index): XY => {
		const [fromX, fromY] = points[index] ?? first
		return [fromX + (x - fromX) * t, fromY + (y - fromY) * t]
	})
	return bezier(next, t)
}

/** SVG 2, appendix B.2.4, "Conversion from endpoint to center parameterization"; then along the arc. */
function arc([x1, y1]: XY, [rx, ry, degrees, large, sweep, dx, dy]: readonly number[]): XY[] {
	const [a = 1, b = 1, turn = 0, x = 0, y = 0] = [rx, ry, ((degrees ?? 0) * Math.PI) / 180, dx, dy]
	const [cos, sin] = [Math.cos(turn), Math.sin(turn)]
	const [px, py] = [(-cos * x - sin * y) / 2, (sin * x - cos * y) / 2]
	const under = (a * a * b * b - a * a * py * py - b * b * px * px) / (a * a * py * py + b * b * px * px)
	const root = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, under))
	const [cx, cy] = [(root * a * py) / b, (-root * b * px) / a]
	const from = Math.atan2((py - cy) / b, (px - cx) / a)
	const to = Math.atan2((-py - cy) / b, (-px - cx) / a)
	const full = 2 * Math.PI
	const span = sweep === 1 ? (((to - from) % full) + full) % full : -((((from - to) % full) + full) % full)
	const [mx, my] = [x1 + x / 2 + cos * cx - sin * cy, y1 + y / 2 + sin * cx + cos * cy]
	return [...steps.slice(0, -1), ...steps.map((step) => step - 1 / 24)].toSorted().map((t) => {
		const angle = from + span * t
		return [
			mx + cos * a * Math.cos(angle) - sin * b * Math.sin(angle),
			my + sin * a * Math.cos(angle) + cos * b * Math.sin(angle),
		]
	})
}

const sizes: Readonly<Record<string, number>> = { m: 2, l: 2, q: 4, c: 6, a: 7, z: 0 }

type Command = { readonly letter: string; readonly numbers: readonly number[] }

/** One command; where its letter stands for several, each of them (after `m` comes `l`). */
function written(letter: string, rest: string): Command[] {
	const numbers = [...rest.matchAll(/-?(?:\d+\.?\d*|\.\d+)/g)].map(([number]) => Number(number))
	const size = sizes[letter] ?? Number.NaN
	if (size === 0 && numbers.length === 0) return [{ letter, numbers }]
	if (!(numbers.length > 0 && numbers.length % size === 0)) throw new Error(`not a path: ${letter}${rest}`)
	return Array.from({ length: numbers.length / size }, (_, index) => ({
		letter: index > 0 && letter === 'm' ? 'l' : letter,
		numbers: numbers.slice(index * size, (index + 1) * size),
	}))
}

const commandsOf = (d: string): Command[] => {
	if (!/^m[-\d.a-z ]*$/.test(d)) throw new Error(`not a path: ${d.slice(0, 60)}`)
	return [...d.matchAll(/([a-z])([^a-z]*)/g)].flatMap(([, letter = '', rest = '']) => written(letter, rest))
}

const pointsFrom = ([x, y]: XY, numbers: readonly number[]): XY[] =>
	Array.from({ length: numbers.length / 2 }, (_, index) => [
		x + (numbers[index * 2] ?? 0),
		y + (numbers[index * 2 + 1] ?? 0),
	])

function along(at: XY, { letter, numbers }: Command): XY[] {
	if (letter === 'a') return [...arc(at, numbers), ...pointsFrom(at, numbers.slice(5))]
	return steps.map((t) => bezier([at, ...pointsFrom(at, numbers)], t))
}

/** Reads relative commands as the path grammar of SVG 2 (chapter 9.3) has them, by code that shares none with the writer. */
export function readPath(d: string): Outline[] {
	const outlines: Outline[] = []
	let at: XY = [0, 0]
	for (const command of commandsOf(d)) {
		const open = outlines.at(-1)
		if (command.letter === 'm') outlines.push({ points: pointsFrom(at, command.numbers), isClosed: false })
		else if (open === undefined) throw new Error(`not a path: ${d.slice(0, 60)}`)
		else if (command.letter === 'z') {
			open.isClosed = true
			at = open.points[0] ?? at
			continue
		} else open.points.push(...along(at, command))
		at = outlines.at(-1)?.points.at(-1) ?? at
	}
	return outlines
}
