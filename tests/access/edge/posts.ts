import { bodyFor, formOf, pageWith } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { pathOf } from '../ask/cells'
import { called } from '../ask/forms'
import type { Sending } from '../ask/send'
import { actionRows, rows } from '../table/rows'
import { draft, things } from './bakery'

export type Post = { readonly what: string; readonly path: string; readonly sending: Sending }

/** Every form and every action, filled in so that it would go through, of the person who may send it. */
export function posts(): Post[] {
	const forms = rows
		.filter(({ method, route }) => method === 'POST' && route !== '/csp-report')
		.map((row) => ({
			what: pathOf(row, ':id', things),
			path: pathOf(row, things.proposal, things),
			sending: bodyFor(row, things, draft),
		}))
	const actions = actionRows.map(({ name }) => ({
		what: `action ${name}`,
		path: pageWith(name, things),
		sending: called(actionNamed(name).id, formOf(name, things)),
	}))
	return [...forms, ...actions]
}
