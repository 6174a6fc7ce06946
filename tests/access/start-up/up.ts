import { send } from '../ask/send'
import type { Started } from '../site/run'

/** @throws with what it said, when it ends or does not answer */
export async function untilUp(origin: string, { code, said }: Started): Promise<void> {
	let ended = false
	void code.then(() => {
		ended = true
	})
	for (let tries = 0; tries < 200; tries += 1) {
		if (ended) throw new Error(said())
		const isUp = await send(origin, '/sign-in').then(
			({ status }) => status === 200,
			() => false,
		)
		if (isUp) return
		await new Promise((resolve) => setTimeout(resolve, 100))
	}
	throw new Error(said())
}
