import { answering } from '@/app/server/answers/agreement/answering'
import { writeTo } from '@/app/server/answers/agreement/write-to'
import { stamp } from '@/app/server/start/clock'
import { agreeToRecords } from '@/db/agreements/signing/consent'
import { consentForm } from '@/lib/forms/answer/signing-form'

type Context = RouteContext<'/agreement/[agreement]/answer/consent'>

export async function POST(request: Request, { params }: Context): Promise<Response> {
	return answering(request, (await params).agreement, {
		schema: consentForm,
		page: 'consent',
		next: '/sign',
		give: (who, agreement, { once, document, words }) =>
			agreeToRecords(who, { agreement, once, document, words, writeTo: writeTo() }, stamp()),
	})
}
