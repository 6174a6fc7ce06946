import { billDue } from '@/db/money/bills/bill-due'
import { openDatabase } from '@/db/open'
import { leaseMail } from '@/db/outbox/lease'
import { approve } from '@/db/proposals/answers/approve'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { viewerOf } from '@/db/viewer'
import { stampsFrom } from '@/demo/stamps'
import { type Command, commandSchema } from './command'

/** A process of its own with a connection of its own: does what it is told, at the millisecond at which it is told to. */
const stamps = stampsFrom(`a racer ${process.pid}`)

async function run(command: Command): Promise<unknown> {
	const stamp = stamps(command.now)
	switch (command.does) {
		case 'approve': {
			const { person, proposal, revision, once } = command
			const wanted = { option: 'a', places: {}, extras: [], leftOut: [], purchaseOrder: '' }
			return approve(await viewerOf(person), { proposal, revision, once, browser: 'a racer', ...wanted }, stamp)
		}
		case 'use the link':
			return sessionAdapter(() => new Date(command.now)).useVerificationToken({ token: command.token })
		case 'lease': {
			const leased = await leaseMail(await viewerOf('system'), command.most, stamp)
			return leased.map(({ id }) => id)
		}
		case 'bill':
			return billDue(await viewerOf('system'), stamp)
		default:
			return command satisfies never
	}
}

let folder = ''

async function answer(message: unknown): Promise<void> {
	const command = commandSchema.parse(message)
	if (command.folder !== folder) {
		folder = command.folder
		openDatabase(folder)
	}
	while (performance.timeOrigin + performance.now() < command.at);
	const said = await run(command).catch((error: unknown) => ({ thrown: String(error) }))
	process.send?.({ said: said ?? null })
}

process.on('message', (message) => void answer(message))
process.send?.({ said: 'ready' })
