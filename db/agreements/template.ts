import { desc } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { faults } from '@/lib/agreement/template/faults'
import { type Template, templateSchema } from '@/lib/agreement/template/template'
import type { Problem } from '@/lib/proposal/problem'
import { canonical } from '@/lib/record/canonical'
import { sha256 } from '@/lib/record/hash'
import { type Reading, read, write } from '../open'
import { append } from '../record/append'
import { agreementTemplate } from '../schema'
import type { Stamp } from '../stamp'
import { type Denied, denied, hidden } from '../viewer'

/** The clauses that the next agreement is made from: the studio's own, or those it starts with. */
export function latestTemplate(db: Reading): Template {
	const [newest] = db.select().from(agreementTemplate).orderBy(desc(agreementTemplate.version)).limit(1).all()
	return newest === undefined ? defaultTemplate : templateSchema.parse(JSON.parse(newest.document))
}

export async function readTemplate(viewer: Viewer): Promise<Template | undefined> {
	if (denied(viewer, 'change agreements', null) !== null) return undefined
	return read(latestTemplate)
}

export type SavingTemplate = Pick<Template, 'version' | 'clauses'>
export type SavedTemplate =
	| { readonly ok: true; readonly version: number }
	| { readonly ok: false; readonly why: 'changed elsewhere' | 'nothing changed' }
	| { readonly ok: false; readonly why: 'not ready'; readonly problems: readonly Problem[] }
	| Denied

/** A new version, made from `version`; what was issued keeps the clauses that it was made from. */
export async function saveTemplate(
	viewer: Viewer,
	{ version, clauses }: SavingTemplate,
	stamp: Stamp,
): Promise<SavedTemplate> {
	const no = denied(viewer, 'change agreements', null)
	if (no !== null || viewer.is !== 'staff') return no ?? hidden
	const problems = faults({ clauses })
	if (problems.length > 0) return { ok: false, why: 'not ready', problems }
	return write((tx): SavedTemplate => {
		const newest = latestTemplate(tx)
		if (newest.version !== version) return { ok: false, why: 'changed elsewhere' }
		if (canonical(newest.clauses) === canonical(clauses)) return { ok: false, why: 'nothing changed' }
		const document = canonical(templateSchema.parse({ v: 1, version: version + 1, clauses }))
		tx.insert(agreementTemplate)
			.values({ version: version + 1, document, madeAt: stamp.at, madeBy: viewer.person })
			.run()
		append(tx, stamp, viewer, {
			act: 'agreement template changed',
			object: `agreement template ${version + 1}`,
			client: null,
			facts: { version: version + 1, document: sha256(document) },
		})
		return { ok: true, version: version + 1 }
	})
}
