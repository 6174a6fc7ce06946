import pino, { type Logger } from 'pino'
import { env } from './env'

let kept: Logger | undefined

/** Who, what, when, as JSON lines; never a token, a query string or an address. */
export function log(): Logger {
	const { logFile } = env()
	kept ??= pino(
		{ base: null, timestamp: pino.stdTimeFunctions.isoTime },
		pino.destination({ dest: logFile ?? 1, mkdir: true, sync: true }),
	)
	return kept
}
