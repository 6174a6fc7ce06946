import { randomBytes } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { v7 } from 'uuid'
import { openDatabase } from '@/db/open'
import { publish } from '@/db/proposals/publish'
import type { Stamp } from '@/db/stamp'
import { viewerOf } from '@/db/viewer'
import type { Seeded } from '@/demo/seed'
import { onceFor } from '@/lib/record/once-for'
import { id } from '@/lib/units/id'

/** Publishes the drafts that `drafts.json` names, one by one, as one form does, and says each that is out. */
const [, , folder = ''] = process.argv
const cast: Seeded = JSON.parse(readFileSync(join(folder, 'cast.json'), 'utf8'))
const { form, drafts }: { form: string; drafts: string[] } = JSON.parse(
	readFileSync(join(folder, 'drafts.json'), 'utf8'),
)
openDatabase(folder)
const stamp = (): Stamp => ({ at: cast.now, id: <Of extends string>() => id<Of>(v7()), salt: () => randomBytes(16) })
const designer = await viewerOf(cast.people.designer.id)
for (const draft of drafts) {
	const proposal = id<'proposal'>(draft)
	const once = onceFor(id<'once'>(form), proposal)
	const done = await publish(designer, { proposal, version: 1, within: cast.seasons.winter, once }, stamp())
	if (!done.ok && done.why !== 'not waiting for us') throw new Error(`publishing: ${done.why}`)
	if (done.ok) process.stdout.write(`${proposal}\n`)
}
process.stdout.write('over\n')
