import { keepPaper } from '@/app/server/studio/keep-paper'

/** A signature on paper, written down by the studio with a picture of it. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/agreements/[agreement]/paper'>,
): Promise<Response> {
	const { agreement } = await params
	return keepPaper(request, agreement)
}
