import { answering } from '@/app/server/answers/agreement/answering'
import { wakePapers } from '@/app/server/answers/agreement/make-papers'
import { senderAddress } from '@/app/server/answers/agreement/sender'
import { sessionToken } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { signAgreement } from '@/db/agreements/signing/sign'
import { browserWords } from '@/lib/format/browser'
import { signForm } from '@/lib/forms/answer/signing-form'

type Context = RouteContext<'/agreement/[agreement]/answer/sign'>

export async function POST(request: Request, { params }: Context): Promise<Response> {
	const { headers } = request
	const from = { sender: senderAddress(headers), browser: browserWords(headers.get('user-agent') ?? '') }
	const token = (await sessionToken()) ?? ''
	return answering(request, (await params).agreement, {
		schema: signForm,
		page: 'sign',
		next: '/done',
		give: async (who, agreement, form) => {
			const signed = await signAgreement(who, { agreement, ...form, ...from, token }, stamp())
			if (signed.ok) wakePapers()
			return signed
		},
	})
}
