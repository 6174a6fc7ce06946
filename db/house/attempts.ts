import { z } from 'zod'
import type { Viewer } from '@/lib/access/viewer'
import type { Attempt } from '@/lib/forms/read'
import { moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import type { Stamp } from '../stamp'
import { actorOf, denied } from '../viewer'
import { sideFile } from './side-file'

const typedSchema = z.record(z.string(), z.union([z.string(), z.array(z.string())]))
const errorsSchema = z.record(z.string(), z.string())
const keptMs = 3_600_000

/** Keeps what was typed into a form that went wrong, for the page that shows it again; an hour, for the same person. */
export async function keepAttempt(
	viewer: Viewer,
	key: Id<'once'>,
	{ typed, errors }: Attempt,
	{ at }: Pick<Stamp, 'at'>,
): Promise<void> {
	sideFile()
		.prepare('INSERT OR REPLACE INTO attempt (key, owner, typed, errors, at) VALUES (?, ?, ?, ?, ?)')
		.run(key, actorOf(viewer), JSON.stringify(typed), JSON.stringify(errors), at)
}

export async function readAttempt(viewer: Viewer, key: Id<'once'>): Promise<Attempt | undefined> {
	const row = sideFile()
		.prepare<[string, string], { typed: string; errors: string }>(
			'SELECT typed, errors FROM attempt WHERE key = ? AND owner = ?',
		)
		.get(key, actorOf(viewer))
	return row && { typed: typedSchema.parse(JSON.parse(row.typed)), errors: errorsSchema.parse(JSON.parse(row.errors)) }
}

/** What was typed into forms that were given up. */
export async function sweepAttempts(viewer: Viewer, { at }: Pick<Stamp, 'at'>): Promise<void> {
	if (denied(viewer, 'keep house', null) !== null) return
	const before = moment(new Date(Date.parse(at) - keptMs))
	sideFile().prepare('DELETE FROM attempt WHERE at < ?').run(before)
}
