import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Viewer } from '@/lib/access/viewer'
import { paperBytes } from '../agreements/papers/files'
import { read } from '../open'
import { keptLines } from '../record/kept-lines'
import { agreementPaper } from '../schema'
import { denied } from '../viewer'

export type Exported = { readonly lines: number; readonly papers: number }

/**
 * Writes every line of the record to `events.json` in a folder, and the sealed files of its agreements to `papers/`, as
 * they were at one moment. Of what people wrote it holds only what is printed in those files.
 */
export async function exportRecord(viewer: Viewer, folder: string): Promise<Exported | undefined> {
	if (denied(viewer, 'keep house', null) !== null) return undefined
	const { lines, kept } = read((db) => ({
		lines: keptLines(db),
		kept: db.select({ document: agreementPaper.document }).from(agreementPaper).all(),
	}))
	const files = kept.flatMap(({ document }) => {
		const bytes = paperBytes(document)
		return bytes === undefined ? [] : [{ name: `${document}.pdf`, bytes }]
	})
	mkdirSync(join(folder, 'papers'), { recursive: true, mode: 0o700 })
	writeFileSync(join(folder, 'events.json'), `[\n${lines.map((line) => JSON.stringify(line)).join(',\n')}\n]\n`)
	for (const { name, bytes } of files) writeFileSync(join(folder, 'papers', name), bytes)
	return { lines: lines.length, papers: files.length }
}
