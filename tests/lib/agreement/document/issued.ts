import { type Issue, makeDocument } from '@/lib/agreement/document/make'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { agreementId, facts, terms } from '../sample'

export const firstIssue: Issue = { agreement: agreementId, number: 1, supersedes: null }

/** The sample agreement as it is issued; whatever is different from it is handed in. */
export function issued(its = terms, known = facts, template = defaultTemplate, issue = firstIssue) {
	const made = makeDocument(its, known, template, issue)
	if (!made.ok) throw new Error(made.problems.map(({ says }) => says).join(' '))
	return made.document
}
