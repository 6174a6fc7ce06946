import type { Problem } from '../../proposal/problem'
import type { Hash } from '../../record/hash'
import type { Id } from '../../units/id'
import type { AgreementFacts } from '../facts'
import { instalmentsOf } from '../instalment/instalments'
import { fixedCents } from '../season'
import { fill } from '../template/fill'
import { fillingOf } from '../template/filling'
import type { Template } from '../template/template'
import { underAgreement } from '../template/under-agreement'
import type { Terms } from '../terms'
import { type AgreementDocument, documentSchema } from './document'
import { problems } from './ready'

/** Which issue of which agreement it is. */
export type Issue = {
	readonly agreement: Id<'agreement'>
	readonly number: number
	readonly supersedes: Hash | null
}
export type Made =
	| { readonly ok: true; readonly document: AgreementDocument }
	| { readonly ok: false; readonly problems: readonly Problem[] }

/** The document that is issued and signed, from what was agreed and the template as it stands; or what is missing. */
export function makeDocument(terms: Terms, facts: AgreementFacts, template: Template, issue: Issue): Made {
	const { from, to, seasons, plan, without } = terms
	const found = problems(terms, facts, template)
	if (found.length > 0) return { ok: false, problems: found }
	return {
		ok: true,
		document: documentSchema.parse({
			v: 1,
			...issue,
			templateVersion: template.version,
			currency: facts.currency,
			studio: facts.studio,
			client: facts.client,
			...{ from, to, seasons, plan },
			...underAgreement(seasons, facts),
			instalments: plan === null ? [] : instalmentsOf(seasons, plan),
			totalCents: fixedCents(seasons),
			clauses: fill(template, fillingOf(terms, facts), without).clauses,
		}),
	}
}
