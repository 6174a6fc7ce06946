/**
 * How many cells (a king's steps) each lies from the nearest cell of another label: 1 at the edge of its region. The
 * picture's own edge is no edge of a region.
 */
export function depthsOf(labels: readonly number[], columns: number): number[] {
	const rows = labels.length / columns
	const depths = labels.map(() => Number.POSITIVE_INFINITY)
	const look = (at: number, x: number, y: number) => {
		if (x < 0 || y < 0 || x >= columns || y >= rows) return
		const other = y * columns + x
		const here = labels[other] === labels[at] ? (depths[other] ?? 0) + 1 : 1
		depths[at] = Math.min(depths[at] ?? here, here)
	}
	const sweep = (at: number, step: 1 | -1) => {
		const [x, y] = [at % columns, Math.floor(at / columns)]
		look(at, x - step, y)
		for (const across of [-1, 0, 1]) look(at, x + across, y - step)
	}
	for (let at = 0; at < labels.length; at++) sweep(at, 1)
	for (let at = labels.length - 1; at >= 0; at--) sweep(at, -1)
	return depths
}
