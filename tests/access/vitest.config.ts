import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** After the build: the running site is asked over HTTP. One server at a time, since answers are timed. */
export default defineConfig({
	root,
	resolve: { alias: { '@': root.replace(/\/$/, '') } },
	test: {
		include: ['tests/access/**/*.test.ts'],
		globalSetup: ['tests/access/template.ts'],
		pool: 'forks',
		fileParallelism: false,
		testTimeout: 60_000,
		hookTimeout: 60_000,
	},
})
