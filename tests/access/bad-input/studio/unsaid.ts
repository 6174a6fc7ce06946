import { placeOf } from '../../ask/outcome'
import type { Answer } from '../../ask/send'
import { aliveIn, escaped } from '../../look/hostile'
import { open } from '../../site/here'
import { forms } from './forms'

/** Of a field that nobody sees: any answer will do that fails nothing and lets nothing live. */
async function unsaidOfHidden(answer: Answer): Promise<string | null> {
	if (answer.status === 404) return null
	if (answer.status !== 303) return `answered ${answer.status}`
	const page = await open.ask('designer', placeOf(answer))
	return page.status < 500 && aliveIn(page.body).length === 0 ? null : `the page answered ${page.status}`
}

/** What is wrong with how a refusal is told on the form's own page, with all that was typed; null when nothing is. */
export async function unsaid(
	form: string,
	field: string,
	answer: Answer,
	typed: string | Buffer,
): Promise<string | null> {
	if (forms[form]?.hidden.includes(field)) return unsaidOfHidden(answer)
	const path = placeOf(answer)
	if (answer.status !== 303 || !path.includes('form='))
		return `answered ${answer.status}, led on to ${path.slice(0, 80)}`
	const page = await open.ask('designer', path)
	if (page.status !== 200) return `the form answered ${page.status}`
	if (aliveIn(page.body).length > 0) return 'alive in the page'
	if (!page.body.includes('role="alert"')) return 'the form says nothing'
	const isBox = !['choice', 'tick'].includes(forms[form]?.fields[field] ?? '')
	const shown = typeof typed === 'string' && !/[\u0000-\u001f]/.test(typed) ? escaped(typed) : ''
	return isBox && !page.body.includes(shown) ? 'what was typed is gone' : null
}
