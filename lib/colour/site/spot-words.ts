import type { Spot } from './photo'

const third = (of: number, low: string, high: string): string => (of < 1 / 3 ? low : of > 2 / 3 ? high : '')

/** Where in its photo a colour was found, in words: "low on the left", "high in the middle", "in the middle". */
export function spotWords({ x, y }: Spot): string {
	const [high, side] = [third(y, 'high', 'low'), third(x, 'on the left', 'on the right')]
	return [high, side || 'in the middle'].filter((word) => word !== '').join(' ')
}
