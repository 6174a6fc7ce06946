import { answering } from '@/app/server/answers/answering'
import { stamp } from '@/app/server/start/clock'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { changeForm } from '@/lib/forms/answer-form'
import { choiceQuery, type Typed } from '@/lib/forms/read'

export async function POST(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/answer/change'>,
): Promise<Response> {
	return answering(request, (await params).proposal, {
		schema: changeForm,
		lists: ['about', 'note'],
		page: (fields: Typed) => `change?${choiceQuery({ revision: fields.revision ?? '' })}`,
		give: (who, to, form) => askForChange(who, { ...to, ...form }, stamp()),
	})
}
