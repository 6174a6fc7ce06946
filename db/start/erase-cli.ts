import { randomBytes } from 'node:crypto'
import { existsSync } from 'node:fs'
import { v7 } from 'uuid'
import { moment } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import { idSchema } from '@/lib/units/schema'
import { eraseClient } from '../clients/erase'
import { clientPage } from '../clients/read-clients'
import { emptyLog } from '../house/empty-log'
import { closeSideFile } from '../house/side-file'
import { closeDatabase, databaseFile, read } from '../open'
import { designers } from '../proposals/recipients'
import type { Stamp } from '../stamp'
import { viewerOf } from '../viewer'
import { studioFolder } from './program'
import { start } from './start'

const stamp = (): Stamp => ({
	at: moment(new Date()),
	id: <Of extends string>() => id<Of>(v7()),
	salt: () => randomBytes(16),
})

/** @returns what is missing, or that it is done */
async function erase(folder: string, client: string | undefined, name: string | undefined): Promise<[boolean, string]> {
	const of = idSchema<'client'>().safeParse(client)
	if (!of.success)
		return [false, 'Say which client: npm run erase -- <id in the address of the client’s page> "<name>"']
	if (!existsSync(databaseFile(folder))) return [false, `${folder} holds no studio.`]
	start(folder)
	const [designer] = read(designers)
	const viewer = await viewerOf(designer ?? 'nobody')
	const page = await clientPage(viewer, of.data)
	if (page === undefined) return [false, 'There is no such client.']
	const sure = `${page.client.name} would be erased, for good. To do it: npm run erase -- ${of.data} "${page.client.name}"`
	if (name !== page.client.name) return [false, sure]
	await eraseClient(viewer, of.data, stamp())
	await emptyLog(await viewerOf('system'))
	return [true, `${name} is erased. Backups hold the words until they are deleted.`]
}

/** `npm run erase -- <client id> "<name>"`: erases a client on lawful demand, while the site may be running. */
const [, , client, name] = process.argv
const [isDone, says] = await erase(studioFolder(), client, name)
closeDatabase()
closeSideFile()
const out = isDone ? process.stdout : process.stderr
out.write(`${says}\n`)
process.exitCode = isDone ? 0 : 1
