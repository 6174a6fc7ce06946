import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

export default defineConfig({
	root,
	resolve: { alias: { '@': root.replace(/\/$/, '') } },
	test: {
		include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
		exclude: ['tests/access/**', 'tests/faults/**', 'tests/bench/**'],
		pool: 'forks',
		maxWorkers: 2,
		testTimeout: 60_000,
		hookTimeout: 60_000,
	},
})
