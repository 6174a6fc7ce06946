import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { readTemplate, saveTemplate } from '@/db/agreements/template'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { emptyTerms } from '@/lib/agreement/terms'
import { day } from '@/lib/units/day'
import { designerDoes, designerReads, type Row, row } from './outcomes'

const renamed = defaultTemplate.clauses.map((clause, index) => (index === 0 ? { ...clause, title: 'Us two' } : clause))

/** What the studio does with agreements. */
export const agreementRows: Readonly<Record<string, Row>> = {
	'agreements/draft beginAgreement': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) => beginAgreement(viewer, { client }, stamp())),
	'agreements/draft saveTerms': row(
		'client',
		designerDoes,
	)((viewer, { agreement }, { stamp }) => saveTerms(viewer, { agreement, version: 1, terms: emptyTerms }, stamp())),
	'agreements/issue issueAgreement': row(
		'client',
		designerDoes,
	)((viewer, { unissued: agreement }, { stamp, once }) =>
		issueAgreement(viewer, { agreement, version: 1, signBy: day('2026-10-30'), once: once() }, stamp()),
	),
	'agreements/template readTemplate': row('studio', designerReads)((viewer) => readTemplate(viewer)),
	'agreements/template saveTemplate': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => saveTemplate(viewer, { version: 1, clauses: renamed }, stamp())),
}
