import 'server-only'
import { sweepPapers } from '@/db/agreements/papers/keep'
import { sweepAttempts } from '@/db/house/attempts'
import { backUpDaily } from '@/db/house/backup'
import { emptyLog } from '@/db/house/empty-log'
import { noteLapses } from '@/db/house/lapse'
import { remindDue } from '@/db/house/remind-due'
import { remindSignersDue } from '@/db/house/remind-signers-due'
import { sweepOnce } from '@/db/house/sweep-once'
import { sweepPhotos } from '@/db/house/sweep-photos'
import { billDue } from '@/db/money/bills/bill-due'
import { remindLateDue } from '@/db/money/remind-late'
import { sweepSignIn } from '@/db/sign-in/session'
import { viewerOf } from '@/db/viewer'
import { makePapers } from '../answers/agreement/make-papers'
import { wakeSender } from '../mail/sender'
import { now, stamp } from './clock'
import { log } from './log'

const hourMs = 3_600_000

/** A step that fails keeps none of the others from being taken. */
async function step<T>(what: string, run: () => Promise<T>): Promise<T | undefined> {
	try {
		return await run()
	} catch (error) {
		log().error({ act: 'housekeeping failed', step: what, error: error instanceof Error ? error.message : 'unknown' })
		return undefined
	}
}

export async function keepHouse(): Promise<void> {
	const system = await viewerOf('system')
	const backup = await step('back up', () => backUpDaily(system, stamp()))
	const lapsed = await step('note lapses', () => noteLapses(system, stamp()))
	await step('sweep sign-in', () => sweepSignIn(now()))
	await step('sweep attempts', () => sweepAttempts(system, stamp()))
	await step('sweep keys', () => sweepOnce(system, stamp()))
	await step('sweep photos', () => sweepPhotos(system))
	await step('sweep papers', () => sweepPapers(system))
	await step('make papers', makePapers)
	await step('empty the log', () => emptyLog(system))
	log().info({ act: 'kept house', lapsed, backedUp: backup !== undefined })
}

/** Who is to be reminded by now. */
export async function remindWhoIsDue(): Promise<void> {
	const system = await viewerOf('system')
	const answerers = (await step('remind', () => remindDue(system, stamp()))) ?? 0
	const signers = (await step('remind signers', () => remindSignersDue(system, stamp()))) ?? 0
	const late = (await step('remind who is late', () => remindLateDue(system, stamp()))) ?? 0
	const reminded = answerers + signers
	if (reminded + late === 0) return
	wakeSender()
	log().info({ act: 'reminded', reminded, late })
}

/** What is to be asked for by now, and what is not owed any more. */
export async function billWhatIsDue(): Promise<void> {
	const system = await viewerOf('system')
	const billed = (await step('bill', () => billDue(system, stamp()))) ?? 0
	if (billed === 0) return
	wakeSender()
	log().info({ act: 'billed', billed })
}

/** Every hour what is over is swept, what lapsed is noted, and once a day the studio's file is copied. */
export function startHousekeeping(): void {
	const turn = (run: () => Promise<void>) => () => {
		run().catch((error: unknown) =>
			log().error({ act: 'housekeeping failed', error: error instanceof Error ? error.message : 'unknown' }),
		)
	}
	turn(keepHouse)()
	setInterval(turn(keepHouse), hourMs).unref()
	// Not at once: whoever starts the studio after a while has an hour to look before anybody is written to.
	setInterval(turn(remindWhoIsDue), hourMs).unref()
	setInterval(turn(billWhatIsDue), hourMs).unref()
}
