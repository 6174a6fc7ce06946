import 'server-only'
import { startSender } from '../mail/sender'
import { offerSetUpLink } from '../sign-in/set-up-link'
import { startHousekeeping } from './housekeeping'
import { log } from './log'
import { startSite } from './start'

/** The start: on failure one clear line and out, for a server that half started would answer 500 to everybody. */
export async function begin(): Promise<void> {
	try {
		startSite()
	} catch (error) {
		process.stderr.write(`Doorsill did not start: ${error instanceof Error ? error.message : String(error)}\n`)
		process.exit(1)
	}
	startSender()
	startHousekeeping()
	await offerSetUpLink()
	log().info({ act: 'started' })
}
