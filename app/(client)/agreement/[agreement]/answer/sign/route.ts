import { answering } from '@/app/server/agreements/answering'
import { senderAddress } from '@/app/server/agreements/sender'
import { sessionToken } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { signAgreement } from '@/db/agreements/signing/sign'
import { browserWords } from '@/lib/format/browser'
import { signForm } from '@/lib/forms/agreement/signing-form'

type Context = RouteContext<'/agreement/[agreement]/answer/sign'>

export async function POST(request: Request, { params }: Context): Promise<Response> {
	const { headers } = request
	const from = { sender: senderAddress(headers), browser: browserWords(headers.get('user-agent') ?? '') }
	const token = (await sessionToken()) ?? ''
	return answering(request, (await params).agreement, {
		schema: signForm,
		page: 'sign',
		next: '/done',
		give: (who, agreement, form) => signAgreement(who, { agreement, ...form, ...from, token }, stamp()),
	})
}
