import { backToForm } from '@/app/server/attempt'
import { formFields, refuse, seeOther } from '@/app/server/respond'
import { linkHash } from '@/app/server/sign-in/secrets'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { isSetUpLink, setUpStudio } from '@/db/start/set-up'
import { read } from '@/lib/forms/read'
import { setUpForm } from '@/lib/forms/studio-forms'

export async function POST(request: Request): Promise<Response> {
	const { token, once: _, ...fields } = (await formFields(request)) ?? {}
	const hash = linkHash(String(token))
	if (!(await isSetUpLink(hash))) return refuse(request, 'hidden')
	const made = read(setUpForm, fields)
	if (!made.ok)
		return backToForm(await viewer(), `/set-up?${new URLSearchParams({ token: String(token) })}`, {
			typed: fields,
			errors: made.errors,
		})
	const person = await setUpStudio(hash, made.value, stamp())
	return person === undefined ? refuse(request, 'hidden') : seeOther('/sign-in')
}
