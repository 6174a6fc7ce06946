import { existsSync } from 'node:fs'
import { defineConfig } from '@playwright/test'

const system = '/usr/bin/chromium'

/** Without these a browser as root on a closed network does not start, or calls home in vain. */
const args = [
	'--no-sandbox',
	'--disable-gpu',
	'--disable-quic',
	'--no-first-run',
	'--disable-background-networking',
	'--disable-component-update',
	'--disable-sync',
]

export default defineConfig({
	testDir: 'stories',
	testMatch: '*.story.ts',
	outputDir: 'output/results',
	fullyParallel: true,
	workers: 2,
	timeout: 180_000,
	expect: { timeout: 20_000 },
	forbidOnly: true,
	retries: 0,
	reporter: [['list'], ['json', { outputFile: 'output/report.json' }]],
	globalSetup: './template.ts',
	use: {
		launchOptions: { args, ...(existsSync(system) && { executablePath: system }) },
		locale: 'en-US',
		timezoneId: 'America/New_York',
		// A trace of each step costs a quarter of the time: `--trace on` where one is wanted.
		screenshot: 'only-on-failure',
		actionTimeout: 20_000,
	},
})
