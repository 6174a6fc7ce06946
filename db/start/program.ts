import { existsSync } from 'node:fs'
import nextEnv from '@next/env'
import { closeDatabase, databaseFile, openDatabase, read } from '../open'
import { studio } from '../schema'

/** Where the studio's data lies, by the same environment and `.env` that the site starts with. */
export function studioFolder(): string {
	nextEnv.loadEnvConfig(process.cwd(), false)
	return process.env.DATA_DIR || '.doorsill/data'
}

/** Opens a studio that is somebody's already. @throws when there is none: nothing is made by looking */
export function openStudio(): void {
	const folder = studioFolder()
	const none = `There is no studio in ${folder}. DATA_DIR says where it is.`
	if (!existsSync(databaseFile(folder))) throw new Error(none)
	openDatabase(folder)
	if (read((db) => db.select().from(studio).all()).length === 0) throw new Error(none)
}

/** Runs a program; what stops it is told in one line. */
export async function program(run: () => Promise<void>): Promise<void> {
	try {
		await run()
	} catch (error) {
		process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
		process.exitCode = 1
	} finally {
		closeDatabase()
	}
}
