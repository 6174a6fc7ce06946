import { vi } from 'vitest'
import type { Moment } from '@/lib/units/day'

/** Runs with the site's modules loaded anew, as in a process that starts, at that moment of the studio. */
export async function anew<T>(
	at: Moment,
	settings: Readonly<Record<string, string>>,
	run: () => Promise<T>,
): Promise<T> {
	vi.resetModules()
	const clock = { DEMO: '1', CLOCK_OFFSET_MS: String(Date.parse(at) - Date.now()) }
	const all = { SITE_URL: 'http://127.0.0.1:3000', ...clock, ...settings }
	for (const [name, value] of Object.entries(all)) vi.stubEnv(name, value)
	try {
		return await run()
	} finally {
		vi.unstubAllEnvs()
	}
}
