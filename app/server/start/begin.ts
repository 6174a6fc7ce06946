import 'server-only'
import { startSender } from '../mail/sender'
import { mailFolder } from '../mail/transport'
import { offerSetUpLink } from '../sign-in/set-up-link'
import { env } from './env'
import { startHousekeeping } from './housekeeping'
import { log } from './log'
import { startSite } from './start'

/** Else somebody would wait for a link that lies in a folder. */
function sayWhereMailGoes(): void {
	if (env().smtpUrl !== undefined || env().isDemo) return
	process.stdout.write(`SMTP_URL is not set: no mail is sent, each one is kept as a file in ${mailFolder()}.\n`)
}

/** The start: on failure one clear line and out, for a server that half started would answer 500 to everybody. */
export async function begin(): Promise<void> {
	try {
		startSite()
	} catch (error) {
		process.stderr.write(`Doorsill did not start: ${error instanceof Error ? error.message : String(error)}\n`)
		process.exit(1)
	}
	sayWhereMailGoes()
	startSender()
	startHousekeeping()
	await offerSetUpLink()
	log().info({ act: 'started' })
}
