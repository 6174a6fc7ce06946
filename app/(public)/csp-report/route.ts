import { z } from 'zod'
import { jsonBody } from '@/app/server/respond'
import { log } from '@/app/server/start/log'

const short = z.string().max(300)
const report = z.object({
	'csp-report': z.object({ 'effective-directive': short.optional(), 'blocked-uri': short.optional() }),
})

/** A page did what its policy forbids: noted by directive alone, without the address of the page. */
export async function POST(request: Request): Promise<Response> {
	const said = report.safeParse(await jsonBody(request)).data?.['csp-report']
	log().warn({ act: 'policy violated', directive: said?.['effective-directive'] ?? 'unknown' })
	return new Response(null, { status: 204 })
}
