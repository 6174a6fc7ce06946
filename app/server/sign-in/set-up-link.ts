import 'server-only'
import { offerSetUp } from '@/db/start/set-up'
import { stamp } from '../start/clock'
import { env } from '../start/env'
import { linkHash, randomToken } from './secrets'

/** An empty studio is nobody's: whoever reads this console makes it theirs, by a link that works once. */
export async function offerSetUpLink(): Promise<void> {
	const token = randomToken()
	if (!(await offerSetUp(linkHash(token), stamp()))) return
	process.stdout.write(`\nThis studio is empty. Set it up once, here:\n${env().siteUrl}/set-up?token=${token}\n\n`)
}
