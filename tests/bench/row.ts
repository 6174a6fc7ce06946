/** One line of the bench: name · figure · aim · ok or short. */
export function row(name: string, figure: string, aim: string, isOk: boolean): void {
	process.stdout.write(`${name} · ${figure} · ${aim} · ${isOk ? 'ok' : 'short'}\n`)
}

export const median = (values: readonly number[]): number => {
	const sorted = values.toSorted((a, b) => a - b)
	return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}
