import 'server-only'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { mailFolder } from './transport'

const schema = z.object({
	to: z.object({ name: z.string(), address: z.string() }),
	subject: z.string(),
	text: z.string(),
	cover: z.object({ file: z.string(), alt: z.string() }).optional(),
	pictures: z.array(z.object({ file: z.string(), alt: z.string(), caption: z.string().nullable() })).default([]),
})
const most = 60

/** The newest mails that went to files, the newest first: their names begin with the time. */
export function keptMails() {
	const folder = mailFolder()
	if (!existsSync(folder)) return []
	return readdirSync(folder)
		.filter((name) => name.endsWith('.json'))
		.toSorted()
		.toReversed()
		.slice(0, most)
		.map((name) => ({ id: name, ...schema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))) }))
}

const named = /^[\w-]+\.(?:0\.png|[1-9]\.jpg)$/

/** A picture of such a mail; undefined where there is none of that name. */
export function keptPicture(name: string): Buffer | undefined {
	const file = join(mailFolder(), name)
	return named.test(name) && existsSync(file) ? readFileSync(file) : undefined
}
