import type { BrowserContext } from '@playwright/test'

const loopback = new Set(['127.0.0.1', ''])

/** Pages refuse with these on purpose; a browser writes each to its console. */
const answered = /status of (404|403|409|422|401|303)/

/** Notes what goes wrong in a page without a word to anybody: script errors, what the policy refused, requests to elsewhere. */
export async function watch(context: BrowserContext, wrong: string[]): Promise<void> {
	context.on('request', (request) => {
		const { protocol, hostname } = new URL(request.url())
		if (protocol !== 'data:' && !loopback.has(hostname)) wrong.push(`request: ${request.url()}`)
	})
	context.on('weberror', (error) => wrong.push(`script error: ${error.error().message}`))
	context.on('console', (message) => {
		if (message.type() === 'error' && !answered.test(message.text())) wrong.push(`console: ${message.text()}`)
	})
	await context.addInitScript(() => {
		document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile }) => {
			throw new Error(`policy: ${effectiveDirective} refused ${blockedURI} from ${sourceFile}`)
		})
	})
}
