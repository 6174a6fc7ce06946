import { afterAll } from 'vitest'

/** Counts what the tests of a file try, and says so after the last of them. */
export function tally(say: (count: number) => string): () => void {
	let count = 0
	afterAll(() => {
		process.stdout.write(`${say(count)}\n`)
	})
	return () => {
		count += 1
	}
}
