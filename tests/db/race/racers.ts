import { type ChildProcess, fork } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { z } from 'zod'
import type { Told } from './command'

const answer = z.tuple([z.object({ said: z.unknown() })]).rest(z.unknown())

export type Racers = {
	/** Tells each its own command and starts them at the same millisecond. @returns what each said, in their order */
	readonly race: (folder: string, ...told: readonly Told[]) => Promise<readonly unknown[]>
	readonly end: () => Promise<void>
}

const heard = async (child: ChildProcess) => answer.parse(await once(child, 'message'))[0].said

/** Enough for both to have heard and to be waiting. */
const headStartMs = 12

export async function racers(count: number): Promise<Racers> {
	const script = join(import.meta.dirname, 'racer.ts')
	const children = Array.from({ length: count }, () => fork(script, { execArgv: ['--import', 'tsx'] }))
	await Promise.all(children.map(heard))
	return {
		race: async (folder, ...told) => {
			const at = performance.timeOrigin + performance.now() + headStartMs
			return Promise.all(
				children.map((child, index) => {
					child.send({ ...told[index], folder, at })
					return heard(child)
				}),
			)
		},
		end: async () => {
			const gone = children.map((child) => once(child, 'exit'))
			for (const child of children) child.disconnect()
			await Promise.all(gone)
		},
	}
}
