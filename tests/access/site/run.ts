import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { actionKey, startArguments } from '@/demo/machine.mjs'

const root = join(import.meta.dirname, '..', '..', '..')

export type Started = {
	/** What it said, both ways. */
	readonly said: () => string
	readonly code: Promise<number | null>
	readonly stop: () => Promise<void>
}

/** `next start` on loopback with these settings and no others of ours; without a port it takes that of PORT. */
export function nextStart(port: number | undefined, settings: Readonly<Record<string, string>>): Started {
	const { PATH = '', HOME = '' } = process.env
	const ours = { NODE_ENV: 'production' as const, NEXT_TELEMETRY_DISABLED: '1' }
	const at = port === undefined ? [] : ['-p', String(port)]
	const server = spawn(process.execPath, [...startArguments, ...at], {
		cwd: root,
		env: { PATH, HOME, ...ours, NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: actionKey(), ...settings },
	})
	let said = ''
	for (const stream of [server.stdout, server.stderr])
		stream.on('data', (chunk: Buffer) => {
			said += chunk.toString()
		})
	const code = new Promise<number | null>((resolve) => server.once('exit', resolve))
	const stop = async () => {
		if (server.exitCode === null) server.kill('SIGTERM')
		await code
	}
	return { said: () => said, code, stop }
}
