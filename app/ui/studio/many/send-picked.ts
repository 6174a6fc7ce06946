/** One of many after it was tried; nothing is said of one that is out. */
export type Outcome = { readonly name: string; readonly says: string | null }
type Reply = { readonly outcomes: readonly Outcome[] }

/** So few that it is seen to go on, so many that the site is not asked too often. */
const atOnce = 5

type Picked = { readonly action: string; readonly form: FormData; readonly picks: readonly string[] }

const pause = (seconds: number) => new Promise((resolve) => setTimeout(resolve, seconds * 1000))

const priceOf = /^price\.([^.]+)\./

/** The form with a few of those that are ticked, and with the prices of no others. */
function bodyFor(form: FormData, picks: readonly string[]): URLSearchParams {
	const fields = [...form].flatMap(([name, value]) => {
		const of = priceOf.exec(name)?.[1]
		const isLeft = name === 'pick' || name.startsWith('$') || typeof value !== 'string'
		return isLeft || (of !== undefined && !picks.includes(of)) ? [] : [[name, value]]
	})
	return new URLSearchParams([...fields, ...picks.map((pick) => ['pick', pick])])
}

/** Sends them again where the site asks to wait; undefined when it is out of reach or will not have them. */
async function sent(action: string, form: FormData, picks: readonly string[]): Promise<readonly Outcome[] | undefined> {
	const body = bodyFor(form, picks)
	try {
		const answer = await fetch(action, { method: 'POST', body, headers: { accept: 'application/json' } })
		if (answer.status === 429) {
			await pause(Number(answer.headers.get('retry-after') ?? 5))
			return sent(action, form, picks)
		}
		if (!answer.ok) return undefined
		const reply: Reply = await answer.json()
		return reply.outcomes
	} catch {
		return undefined
	}
}

/** Does a few at a time and hands on what came of them. @returns what is to be said at the end; nothing when all were sent */
export async function sendPicked(
	{ action, form, picks }: Picked,
	came: (more: readonly Outcome[]) => void,
): Promise<string> {
	for (let at = 0; at < picks.length; at += atOnce) {
		const more = await sent(action, form, picks.slice(at, at + atOnce))
		if (more === undefined)
			return `The site could not be reached after ${at} of ${picks.length}. Those named here are out; open this page again for the rest.`
		came(more)
	}
	return ''
}
