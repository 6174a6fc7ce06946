import 'server-only'
import { cookies } from 'next/headers'
import { z } from 'zod'
import { askCookie } from './cookies'

const schema = z.object({ ask: z.string().max(100), address: z.string(), handle: z.string(), to: z.string() })
export type Asked = z.infer<typeof schema>

/** What this browser asked for a link with; undefined when it did not, or a quarter of an hour ago. */
export async function asked(): Promise<Asked | undefined> {
	const text = (await cookies()).get(askCookie().name)?.value
	if (text === undefined) return undefined
	try {
		return schema.safeParse(JSON.parse(text)).data
	} catch {
		return undefined
	}
}
