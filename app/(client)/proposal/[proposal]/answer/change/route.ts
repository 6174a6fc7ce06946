import { answering } from '@/app/server/answers/answering'
import { stamp } from '@/app/server/start/clock'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { changeForm } from '@/lib/forms/answer/answer-form'
import { placeEntries, placeKeysIn } from '@/lib/forms/answer/place-keys'
import { choiceQuery, type Typed } from '@/lib/forms/read'

/** What was picked on the page that the form was opened from; the way back leads there. */
function chosenIn({ url }: Request, { revision = '' }: Typed): string {
	const sent = new URL(url).searchParams
	const place = placeEntries(placeKeysIn(Object.fromEntries(sent)))
	const [extra, without] = [sent.getAll('extra'), sent.getAll('without')]
	return choiceQuery({ option: sent.get('option') ?? '', place, extra, without, revision }).toString()
}

export async function POST(
	request: Request,
	{ params }: RouteContext<'/proposal/[proposal]/answer/change'>,
): Promise<Response> {
	return answering(request, (await params).proposal, {
		schema: changeForm,
		lists: ['about', 'note'],
		page: (fields: Typed) => `change?${chosenIn(request, fields)}`,
		give: (who, to, form) => askForChange(who, { ...to, ...form }, stamp()),
	})
}
