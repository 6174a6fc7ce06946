import { existsSync } from 'node:fs'
import { chromium } from 'playwright'

const system = '/usr/bin/chromium'

/** A real browser, to look at what was drawn. */
export const openBrowser = () =>
	chromium.launch({
		args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
		...(existsSync(system) && { executablePath: system }),
	})
