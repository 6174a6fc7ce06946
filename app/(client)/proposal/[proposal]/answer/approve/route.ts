import { answering } from '@/app/server/answers/answering'
import { stamp } from '@/app/server/start/clock'
import { approve } from '@/db/proposals/answers/approve'
import { approveForm } from '@/lib/forms/answer/answer-form'
import { choiceQuery, type Typed } from '@/lib/forms/read'

export async function POST(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/answer/approve'>,
): Promise<Response> {
	return answering(request, (await params).proposal, {
		schema: approveForm,
		lists: ['place', 'extra', 'without'],
		page: (fields: Typed) => `approve?${choiceQuery(fields)}`,
		give: (who, to, { place: places, extra: extras, without: leftOut, ...form }) =>
			approve(who, { ...to, ...form, places, extras, leftOut }, stamp()),
	})
}
