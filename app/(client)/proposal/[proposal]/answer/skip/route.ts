import { answering } from '@/app/server/answers/answering'
import { stamp } from '@/app/server/start/clock'
import { skipSeason } from '@/db/proposals/answers/skip'
import { skipForm } from '@/lib/forms/answer/answer-form'
import { choiceQuery, type Typed } from '@/lib/forms/read'

export async function POST(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/answer/skip'>,
): Promise<Response> {
	return answering(request, (await params).proposal, {
		schema: skipForm,
		lists: [],
		page: (fields: Typed) => `skip?${choiceQuery({ revision: fields.revision ?? '' })}`,
		give: (who, to, form) => skipSeason(who, { ...to, ...form }, stamp()),
	})
}
