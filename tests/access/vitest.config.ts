import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('../..', import.meta.url))
const shared = { root, resolve: { alias: { '@': root.replace(/\/$/, '') } } }
const patience = { testTimeout: 180_000, hookTimeout: 180_000 }
const timed = 'tests/access/sign-in/known-or-not.test.ts'

/** After the build: the running site is asked over HTTP, two sites side by side; then one alone, whose answers are timed. */
export default defineConfig({
	root,
	test: {
		globalSetup: ['tests/access/template.ts'],
		projects: [
			{
				...shared,
				test: {
					...{ name: 'two', pool: 'forks', maxWorkers: 2, sequence: { groupOrder: 1 } },
					...patience,
					include: ['tests/access/**/*.test.ts'],
					exclude: [timed],
				},
			},
			{
				...shared,
				test: {
					...{ name: 'alone', pool: 'forks', maxWorkers: 1, sequence: { groupOrder: 2 } },
					...patience,
					include: [timed],
				},
			},
		],
	},
})
