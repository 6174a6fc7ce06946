import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs'
import { connect, databaseFile } from '../open'
import { checkSchema } from './start'

/** `npm run restore -- <file>`: puts a backup in the place of the studio's file, which is kept beside it. The site has to be stopped. */
const folder = process.env.DATA_DIR ?? '.doorsill/data'
const [, , from] = process.argv
if (from === undefined || !existsSync(from)) throw new Error('Say which backup: npm run restore -- <file>')

const copy = `${databaseFile(folder)}.coming`
copyFileSync(from, copy)
const sqlite = connect(copy)
const integrity = sqlite.pragma('integrity_check', { simple: true })
checkSchema(sqlite)
sqlite.close()
if (integrity !== 'ok') throw new Error(`${from} is damaged: ${String(integrity)}`)

const live = databaseFile(folder)
if (existsSync(live)) {
	const old = connect(live)
	old.pragma('wal_checkpoint(TRUNCATE)')
	old.close()
	renameSync(live, `${live}.before`)
}
for (const left of [`${live}-wal`, `${live}-shm`, `${copy}-wal`, `${copy}-shm`]) rmSync(left, { force: true })
renameSync(copy, live)
process.stdout.write(`${live} is the backup now; what was there is ${live}.before\n`)
