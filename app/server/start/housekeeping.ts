import 'server-only'
import { sweepAttempts } from '@/db/house/attempts'
import { backUp } from '@/db/house/backup'
import { emptyLog } from '@/db/house/empty-log'
import { noteLapses } from '@/db/house/lapse'
import { sweepOnce } from '@/db/house/sweep-once'
import { sweepSignIn } from '@/db/sign-in/session'
import { viewerOf } from '@/db/viewer'
import { now, stamp } from './clock'
import { log } from './log'

const hourMs = 3_600_000
const backupHourUtc = 3

async function keepHouse(): Promise<void> {
	const system = await viewerOf('system')
	const lapsed = await noteLapses(system, stamp())
	await sweepSignIn(now())
	await sweepAttempts(system, stamp())
	await sweepOnce(system, stamp())
	await emptyLog(system)
	const backup = now().getUTCHours() === backupHourUtc ? await backUp(system, stamp()) : undefined
	log().info({ act: 'kept house', lapsed, backedUp: backup !== undefined })
}

/** Every hour what is over is swept, what lapsed is noted, and once a night the studio's file is copied. */
export function startHousekeeping(): void {
	const turn = () => {
		keepHouse().catch((error: unknown) =>
			log().error({ act: 'housekeeping failed', error: error instanceof Error ? error.message : 'unknown' }),
		)
	}
	turn()
	setInterval(turn, hourMs).unref()
}
