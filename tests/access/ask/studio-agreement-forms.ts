import { v7 } from 'uuid'
import { termsWith } from '@/e2e/site/issue-to'
import { templateText } from '@/lib/agreement/studio/form/template-form'
import { termsText } from '@/lib/agreement/studio/form/terms-text'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import type { Typed } from '@/lib/forms/read'
import { addDays, day } from '@/lib/units/day'
import { id } from '@/lib/units/id'
import type { Things } from '../site/things'
import type { Fields } from './forms'

const today = () => day(new Date().toISOString().slice(0, 10))
const boxes = (typed: Typed): Fields =>
	Object.entries(typed).flatMap(([name, value]) => [value].flat().map((each) => [name, each] as const))
const named = ({ agreement }: Things): Fields => [
	['once', v7()],
	['agreement', agreement ?? v7()],
]

/** Forms of the studio's pages of agreements, filled in so that they would go through. */
export const studioAgreementForms: Readonly<Record<string, (things: Things) => Fields>> = {
	beginAgreement: ({ client }) => [
		['once', v7()],
		['client', client],
	],
	remindSigner: (things) => [...named(things), ['year', '2027'], ['again', 'yes']],
	remindSigners: () => [
		['once', v7()],
		['year', '2027'],
		['again', 'on'],
	],
	saveTemplate: () => [
		['once', v7()],
		['version', '1'],
		...boxes({ ...templateText(defaultTemplate), 'clause.0.title': 'Between whom' }),
	],
	saveTerms: (things) => [
		...named(things),
		['version', things.terms],
		...boxes({
			...termsText(
				termsWith(things.container.length === 36 ? [id<'container'>(things.container)] : [], addDays(today(), 30)),
			),
			law: `the State of Westmere, ${things.terms}`,
		}),
	],
	issue: (things) => [...named(things), ['version', things.terms], ['signBy', addDays(today(), 20)]],
	takeBack: (things) => named(things),
	endAgreement: (things) => [
		...named(things),
		['on', addDays(today(), 60)],
		['saidOn', addDays(today(), -2)],
		['by', 'client'],
		['reason', 'They move away.'],
		['step', 'end'],
	],
}
