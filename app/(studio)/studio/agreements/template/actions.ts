'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveTemplate as keepTemplate } from '@/db/agreements/template'
import { templateForm } from '@/lib/agreement/studio/form/template-form'
import type { FieldErrors } from '@/lib/forms/read'
import type { Problem } from '@/lib/proposal/problem'

const page = () => '/studio/agreements/template'

const told = {
	'changed elsewhere': 'The clauses were changed elsewhere meanwhile. Open the page again to see them.',
	'nothing changed': 'Nothing is different from the clauses that stand.',
} as const

/** What is wrong with a clause, at the box of the form in which it stands. */
function atBoxes(form: FormData, problems: readonly Problem[]): FieldErrors {
	const keys = [...form].flatMap(([name, value]) => {
		const [, number] = /^clause\.(\d+)\.key$/.exec(name) ?? []
		return number === undefined ? [] : [[String(value), number] as const]
	})
	const fresh = keys.find(([key]) => key === '')?.[1] ?? '0'
	const numberOf = new Map(keys)
	return Object.fromEntries(
		problems.map(({ at, says }) => {
			const [, key = '', box = 'title'] = at.split('.')
			return [`clause.${numberOf.get(key) ?? fresh}.${box === 'order' ? 'place' : box}`, says]
		}),
	)
}

export async function saveTemplate(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change agreements', schema: templateForm, page },
		async (who, { once, version, clauses }) => {
			const saved = await keepTemplate(who, { version, clauses }, stamp(once))
			if (saved.ok) return { to: '/studio/agreements/template?saved' }
			if (isDenied(saved)) return refused(saved)
			return { errors: saved.why === 'not ready' ? atBoxes(form, saved.problems) : { form: told[saved.why] } }
		},
	)
}
