import { formOf, pageWith } from '../../ask/bodies'
import { actionNamed } from '../../ask/build'
import { type Fields, posted, withField } from '../../ask/forms'
import type { Answer } from '../../ask/send'
import { tally } from '../../ask/tally'
import { open } from '../../site/here'
import { type Things, thingsOf } from '../../site/things'

const tried = tally((tries) => `bad input in the studio's forms: ${tries} tried`)

/** Money goes back to whoever has paid more than was due. */
export const things = (form = ''): Things =>
	thingsOf(open.site.folder, open.site.cast, form === 'payBack' ? 'dental' : 'clapboard')

/** Sends a form of the designer's, without scripts, with something about it changed. */
export async function fill(form: string, change: (fields: Fields) => Fields): Promise<Answer> {
	tried()
	const own = things(form)
	const sending = posted(actionNamed(form).id, change(formOf(form, own)))
	return open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })
}

/** What was answered on the phone has to be out again, whatever the answer was. */
async function outAgain(): Promise<void> {
	await fill('steer', (fields) => withField(fields, 'step', 'reopen'))
	await fill('publish', (fields) => fields)
}

/** What is withdrawn has to be out again before it can be withdrawn once more; who is in has to leave to be let in. */
export const again = (form: string) => {
	if (form.startsWith('take')) return outAgain()
	const before = new Map([
		['steer', 'publish'],
		['hire', 'endStaff'],
		['invite', 'endContact'],
		['undo', 'payIn'],
	]).get(form)
	return before === undefined ? undefined : fill(before, (fields) => fields)
}
