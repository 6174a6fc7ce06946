import { expect, it } from 'vitest'
import { type PersonKey, people } from '@/demo/cast/people'
import { urlencoded } from '../ask/forms'
import { type Answer, send } from '../ask/send'
import { apart, median } from '../look/timing'
import { open } from '../site/here'

/** What may differ between two answers of one kind: time, nonce, and what the cookies hold. */
function plain({ status, headers, body }: Answer): string {
	const { date: _, 'set-cookie': cookies, 'content-security-policy': csp, ...rest } = headers
	const shape = cookies?.map((line) => line.replace(/=[^;]*/, '=').replace(/Expires=[^;]*/i, 'Expires='))
	return JSON.stringify({ status, body, rest, shape, csp: String(csp).replace(/nonce-[^']+/g, 'nonce') })
}

/** Somebody asks for a link, and for something small straight after it: each with its time. */
async function asked(address: string) {
	const form = urlencoded([
		['address', address],
		['to', '/'],
	])
	const said = await send(open.site.url, '/sign-in/ask', { method: 'POST', ...form })
	return { said, next: await send(open.site.url, '/tint/5f7488-b5653a.css') }
}

const isKey = (key: string): key is PersonKey => key in people

/** ASVS 5.0.0, 6.3.8: the same text, status and time. */
it('an address that is known here is answered as one that is not, and as fast', async () => {
	// Four times each, for the fifth in an hour is the last; two contacts are left out, so that there are a hundred.
	const known = Object.keys(people)
		.filter(isKey)
		.filter((key) => key !== 'bakerySecondApprover')
		.flatMap((key) => Array.from({ length: 5 }, () => people[key].address))
		.slice(0, 100)
	const times = { known: [], unknown: [], 'after known': [], 'after unknown': [] } satisfies Record<string, number[]>
	const kept: Record<keyof typeof times, number[]> = times
	const answers = { known: new Set<string>(), unknown: new Set<string>() }
	for (const turn of ['warm', 'up', 'first']) await asked(`${turn}@elsewhere.example`)
	for (const [index, address] of known.entries()) {
		const pair = [
			['known', address],
			['unknown', `person${Math.floor(index / 5)}@elsewhere.example`],
		] as const
		for (const [which, whose] of index % 2 === 0 ? pair : pair.toReversed()) {
			const { said, next } = await asked(whose)
			kept[which].push(said.ms)
			kept[`after ${which}`].push(next.ms)
			answers[which].add(plain(said))
		}
	}
	const ms = (which: keyof typeof times) => `${which} ${median(kept[which]).toFixed(2)} ms`
	const [here, next] = [apart(kept.known, kept.unknown), apart(kept['after known'], kept['after unknown'])]
	process.stdout.write(
		`asking for a link: ${ms('known')}, ${ms('unknown')}, told apart ${here.toFixed(2)}; next: ${ms('after known')}, ${ms('after unknown')}, told apart ${next.toFixed(2)}\n`,
	)
	expect(known.length).toBe(100)
	expect([...answers.known]).toHaveLength(1)
	expect(answers.unknown).toEqual(answers.known)
	const ratio = median(kept.known) / median(kept.unknown)
	expect(ratio).toBeGreaterThan(1 / 1.2)
	expect(ratio).toBeLessThan(1.2)
	// Half is chance; of two samples of a hundred the figure strays by 0.04 (its standard error, Mann and Whitney 1947).
	expect(Math.abs(here - 0.5)).toBeLessThan(0.15)
	expect(Math.abs(next - 0.5)).toBeLessThan(0.15)
}, 120_000)
