import { copyFileSync, existsSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { exportRecord } from '../house/export-record'
import { viewerOf } from '../viewer'
import { openStudio, program } from './program'

const verifier = join(import.meta.dirname, '..', '..', 'app', 'documents', 'export', 'verify.mjs')

/** `npm run export -- <folder>`: the record, the sealed agreements and what checks them, for whoever is to check them without this site. */
await program(async () => {
	const [, , to] = process.argv
	if (to === undefined) throw new Error('Say where to: npm run export -- <a new folder>')
	const folder = resolve(to)
	if (existsSync(folder)) throw new Error(`${folder} is there already: name a new folder.`)
	openStudio()
	const { lines, papers } = (await exportRecord(await viewerOf('system'), folder)) ?? { lines: 0, papers: 0 }
	copyFileSync(verifier, join(folder, 'verify.mjs'))
	process.stdout.write(
		`${lines} lines and ${papers} sealed PDF files are in ${folder}; node verify.mjs there checks them\n`,
	)
})
