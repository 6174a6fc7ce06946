import { refuse } from '@/app/server/respond'
import { viewer } from '@/app/server/sign-in/session'
import { stamp } from '@/app/server/start/clock'
import { readScan } from '@/db/agreements/studio/paper'
import { hashSchema } from '@/lib/agreement/document/document'
import { id, isId } from '@/lib/units/id'

/** The picture of a page that was signed on paper, for the studio alone. */
export async function GET(
	request: Request,
	{ params }: RouteContext<'/studio/agreements/[agreement]/scan/[document]'>,
): Promise<Response> {
	const { agreement, document: text } = await params
	const document = hashSchema.safeParse(text)
	if (!isId(agreement) || !document.success) return refuse(request, 'hidden')
	const who = await viewer()
	const asked = { agreement: id<'agreement'>(agreement), document: document.data }
	const bytes = await readScan(who, asked, stamp())
	if (bytes === undefined) return refuse(request, 'hidden', who)
	return new Response(bytes, {
		headers: {
			'content-type': 'image/jpeg',
			'content-length': String(bytes.length),
			'cache-control': 'private, no-store',
			'content-security-policy': "default-src 'none'",
			'x-content-type-options': 'nosniff',
		},
	})
}
