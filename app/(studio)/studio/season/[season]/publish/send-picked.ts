/** One draft after it was tried; nothing is said of one that is out. */
export type Outcome = { readonly proposal: string; readonly name: string; readonly says: string | null }
type Reply = { readonly outcomes: readonly Outcome[] }

/** So few that it is seen to go on, so many that the site is not asked too often. */
const atOnce = 5

type Picked = { readonly action: string; readonly once: string; readonly picks: readonly string[] }

const pause = (seconds: number) => new Promise((resolve) => setTimeout(resolve, seconds * 1000))

/** Sends them again where the site asks to wait; undefined when it is out of reach or will not have them. */
async function sent(action: string, once: string, picks: readonly string[]): Promise<readonly Outcome[] | undefined> {
	const body = new URLSearchParams([['once', once], ...picks.map((pick) => ['pick', pick])])
	try {
		const answer = await fetch(action, { method: 'POST', body, headers: { accept: 'application/json' } })
		if (answer.status === 429) {
			await pause(Number(answer.headers.get('retry-after') ?? 5))
			return sent(action, once, picks)
		}
		if (!answer.ok) return undefined
		const reply: Reply = await answer.json()
		return reply.outcomes
	} catch {
		return undefined
	}
}

/** Publishes a few at a time and hands on what came of them. @returns what is to be said at the end; nothing when all were sent */
export async function sendPicked(
	{ action, once, picks }: Picked,
	came: (more: readonly Outcome[]) => void,
): Promise<string> {
	for (let at = 0; at < picks.length; at += atOnce) {
		const more = await sent(action, once, picks.slice(at, at + atOnce))
		if (more === undefined)
			return `The site could not be reached after ${at} of ${picks.length}. Those named here are out; open this page again for the rest.`
		came(more)
	}
	return ''
}
