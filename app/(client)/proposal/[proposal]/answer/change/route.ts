import { answering } from '@/app/server/answers/answering'
import { stamp } from '@/app/server/start/clock'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { changeForm } from '@/lib/forms/answer-form'

export async function POST(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/answer/change'>,
): Promise<Response> {
	return answering(request, (await params).proposal, {
		schema: changeForm,
		lists: ['about', 'note'],
		page: () => 'change',
		give: (who, to, form) => askForChange(who, { ...to, ...form }, stamp()),
	})
}
