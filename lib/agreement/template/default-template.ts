import { defaultClauses } from './default-clauses'
import type { Template } from './template'

/** The first version of a studio's template. Orders leave room between for clauses of its own. */
export const defaultTemplate: Template = {
	v: 1,
	version: 1,
	clauses: defaultClauses.map(([key, title, text], index) => ({
		...{ key, title, text },
		isOn: true,
		order: 10 * (index + 1),
	})),
}
