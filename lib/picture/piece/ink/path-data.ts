import type { Point } from './point'
import type { Leg, Line, Round, Shape } from './shape'

const letters = ['', 'l', 'q', 'c'] as const

/** Writes relative commands in whole steps of a grid, and remembers where the pen is, so that no error adds up. */
class Pen {
	text = ''
	private letter = ''
	private isAfterLetter = true
	private x = 0
	private y = 0

	constructor(private readonly gridCm: number) {}

	private whole = (cm: number): number => Math.round(cm / this.gridCm)

	/** A letter that is that of the last command is left out, `l` after `m` too. */
	private command(letter: string): void {
		if (letter === this.letter || (letter === 'l' && this.letter === 'm')) return
		this.text += letter
		this.letter = letter
		this.isAfterLetter = true
	}

	/** A minus sign divides two numbers as well as a blank does. */
	private number(value: number): void {
		this.text += value < 0 || this.isAfterLetter ? value : ` ${value}`
		this.isAfterLetter = false
	}

	private offset([x, y]: Point): void {
		this.number(this.whole(x) - this.x)
		this.number(this.whole(y) - this.y)
	}

	private stand([x, y]: Point): void {
		this.x = this.whole(x)
		this.y = this.whole(y)
	}

	private move(to: Point): void {
		this.letter = ''
		this.command('m')
		this.offset(to)
		this.stand(to)
	}

	private leg(leg: Leg): void {
		this.command(letters[leg.length])
		for (const point of leg) this.offset(point)
		this.stand(leg.at(-1) ?? leg[0])
	}

	private shut(from: Point): void {
		this.command('z')
		this.stand(from)
	}

	line({ from, legs, closed }: Line): void {
		this.move(from)
		for (const leg of legs) this.leg(leg)
		if (closed) this.shut(from)
	}

	/** One arc from the leftmost point all round, but for one step of the grid, which the closing line covers. */
	round({ centre: [x, y], acrossCm, alongCm, tilt }: Round): void {
		const [rx, ry] = [Math.max(1, this.whole(acrossCm / 2)), Math.max(1, this.whole(alongCm / 2))]
		const degrees = rx === ry ? 0 : Math.round((tilt * 180) / Math.PI)
		const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)]
		const left = Math.hypot(acrossCm * cos, alongCm * sin) / 2
		const start: Point = [x - left, y - ((acrossCm ** 2 - alongCm ** 2) * sin * cos) / (4 * left)]
		this.move(start)
		this.command('a')
		for (const value of [rx, ry, degrees, 1, 1, 0, 1]) this.number(value)
		this.shut(start)
	}
}

/** The `d` of a path, in whole steps of `gridCm`. */
export function pathData(shapes: readonly Shape[], gridCm: number): string {
	const pen = new Pen(gridCm)
	for (const shape of shapes) {
		if ('centre' in shape) pen.round(shape)
		else pen.line(shape)
	}
	return pen.text
}
