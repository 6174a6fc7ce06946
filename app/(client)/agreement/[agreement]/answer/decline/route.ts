import { answering } from '@/app/server/answers/agreement/answering'
import { stamp } from '@/app/server/start/clock'
import { declineAgreement } from '@/db/agreements/signing/decline'
import { browserWords } from '@/lib/format/browser'
import { declineForm } from '@/lib/forms/answer/signing-form'

type Context = RouteContext<'/agreement/[agreement]/answer/decline'>

export async function POST(request: Request, { params }: Context): Promise<Response> {
	const browser = browserWords(request.headers.get('user-agent') ?? '')
	return answering(request, (await params).agreement, {
		schema: declineForm,
		page: 'decline',
		next: '/done',
		give: (who, agreement, form) => declineAgreement(who, { agreement, ...form, browser }, stamp()),
	})
}
