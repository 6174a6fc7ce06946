import { log } from './log'

/** What nobody expected, with the reference that the page shows; never what was sent. */
export function reportError(error: unknown, where: { method: string; route: string }): void {
	const digest = error instanceof Error && 'digest' in error ? String(error.digest) : undefined
	const said =
		error instanceof Error ? { name: error.name, message: error.message, stack: error.stack } : { name: String(error) }
	log().error({ act: 'failed', ...where, reference: digest, ...said })
}
