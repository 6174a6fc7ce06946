import { RateLimiterRes, RateLimiterSQLite } from 'rate-limiter-flexible'
import { sideFile } from '@/db/house/side-file'
import { sha256 } from '@/lib/record/hash'
import { log } from '../start/log'

/** How often, within how many seconds. It takes six senders to use up what may be asked for one address. */
const limits = {
	'posts of one sender': [240, 60],
	'links to one address asked by one sender': [5, 3600],
	'links to one address': [30, 3600],
	'links asked by one sender': [20, 3600],
	'confirmations of one sender': [30, 600],
	'photos of one sender': [60, 600],
	'covers of one sender': [120, 60],
	'violation reports': [60, 60],
} as const
export type Limit = keyof typeof limits

declare global {
	var doorsillLimits: Map<Limit, RateLimiterSQLite> | undefined
}

function limiter(name: Limit): RateLimiterSQLite {
	globalThis.doorsillLimits ??= new Map()
	const known = globalThis.doorsillLimits.get(name)
	if (known !== undefined) return known
	const [points, duration] = limits[name]
	const made = new RateLimiterSQLite({
		storeClient: sideFile(),
		storeType: 'better-sqlite3',
		tableName: 'counter',
		tableCreated: true,
		keyPrefix: name.replaceAll(' ', '-'),
		points,
		duration,
	})
	globalThis.doorsillLimits.set(name, made)
	return made
}

/** Counts one more for `who`; the seconds to wait when that is too many, else nothing. */
export async function tooMany(name: Limit, who: string): Promise<number | undefined> {
	try {
		await limiter(name).consume(sha256(who).slice(0, 32))
		return undefined
	} catch (error) {
		if (!(error instanceof RateLimiterRes)) throw error
		log().warn({ act: 'too often', limit: name })
		return Math.max(1, Math.ceil(error.msBeforeNext / 1000))
	}
}
