import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, expect } from 'vitest'
import { pagesOf } from '../../app/pdf/text'
import { built } from '../ask/build'
import { type Answer, isPdf } from '../ask/send'
import { type Secrets, secretsIn, secretsOf } from '../look/costs'
import { open } from '../site/here'

/** What is looked for, taken from the record before anything happens in it. */
export let secrets: Secrets
let bytes = 0

beforeAll(() => {
	secrets = secretsOf(open.site.folder)
})

afterAll(() => {
	process.stdout.write(
		`canary: ${secrets.cents.size} costs, ${secrets.margins.size} margins and every sentinel looked for in ${Math.round(bytes / 1e6)} MB\n`,
	)
})

/** A file of the build holds nothing of the record: the same bytes lie in the folder that was built. */
export function isBuilt(path: string, answer: Answer): boolean {
	const file = /^\/_next(\/static\/[^?]+)$/.exec(path)?.[1]
	return file !== undefined && Buffer.from(answer.body).equals(Buffer.from(readFileSync(join(built, file), 'utf8')))
}

/** Where a drawing puts its lines: measures of it, which may look like an amount. */
const geometry =
	/ (?:d|x|y|x1|x2|y1|y2|cx|cy|r|rx|ry|fx|fy|width|height|points|viewBox|transform|gradientTransform|patternTransform|offset|opacity|fill-opacity|stop-opacity|stroke-opacity|stroke-width|stroke-dasharray)="[-\d.,%\sA-Za-z()]*"/g

const figuresOf = (text: string) => (text.includes('<svg xmlns=') ? text.replace(geometry, '') : text)

/** Nothing in it that only the studio may read; its bytes counted. */
export function isClean(what: string, text: string): void {
	bytes += Buffer.byteLength(text)
	const sentinels = text.match(/CANARY[-\w]*/gi) ?? []
	expect([what, sentinels, secretsIn(figuresOf(text), secrets)]).toEqual([what, [], []])
}

/** All that came. */
export const whole = ({ status, headers, body }: Answer) => `${status}\n${JSON.stringify(headers)}\n${body}`

/** The same; of a PDF what a reader sees in it: its packed bytes hold any digits by chance. */
export async function readable(answer: Answer): Promise<string> {
	if (!isPdf(answer.headers)) return whole(answer)
	const pages = await pagesOf(Buffer.from(answer.body, 'latin1'), { withFoot: true })
	expect(pages.join('').length).toBeGreaterThan(100)
	return whole({ ...answer, body: pages.join('\n') })
}
