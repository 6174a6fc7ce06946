import { type ChildProcess, spawn } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Seeded } from '@/demo/seed'
import { actionKey, startArguments } from '../../demo/machine.mjs'
import { template } from '../template'

export type Site = {
	readonly url: string
	readonly folder: string
	readonly cast: Seeded
	readonly stop: () => Promise<void>
}

const root = join(import.meta.dirname, '..', '..')

export function freePort(): Promise<number> {
	return new Promise((resolve, reject) => {
		const probe = createServer()
		probe.once('error', reject)
		probe.listen(0, '127.0.0.1', () => {
			const address = probe.address()
			probe.close(() =>
				address === null || typeof address === 'string' ? reject(new Error('no port')) : resolve(address.port),
			)
		})
	})
}

async function untilUp(url: string, server: ChildProcess, said: () => string): Promise<void> {
	for (let tries = 0; tries < 300; tries += 1) {
		if (server.exitCode !== null) throw new Error(`The site did not start: ${said()}`)
		const isUp = await fetch(`${url}/sign-in`).then(
			({ status }) => status === 200,
			() => false,
		)
		if (isUp) return
		await new Promise((resolve) => setTimeout(resolve, 100))
	}
	throw new Error(`The site did not answer: ${said()}`)
}

type Running = {
	readonly url: string
	readonly folder: string
	readonly said: () => string
	readonly stop: () => Promise<void>
}

/** The built site on a port of its own, over `folder`, which goes when it stops. */
async function run(folder: string, smtpUrl: string, env: Readonly<Record<string, string>>): Promise<Running> {
	const port = await freePort()
	const url = `http://127.0.0.1:${port}`
	const server = spawn(process.execPath, [...startArguments, '-p', String(port)], {
		cwd: root,
		env: {
			...process.env,
			NODE_ENV: 'production',
			NEXT_TELEMETRY_DISABLED: '1',
			NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: actionKey(),
			DATA_DIR: folder,
			SITE_URL: url,
			SMTP_URL: smtpUrl,
			MAIL_FROM: 'post@studio.example',
			LOG_FILE: join(folder, 'site.log'),
			TRUSTED_HOPS: '1',
			...env,
		},
	})
	let said = ''
	for (const stream of [server.stdout, server.stderr])
		stream.on('data', (chunk: Buffer) => {
			said += chunk.toString()
		})
	await untilUp(url, server, () => said)
	const stop = async () => {
		if (server.exitCode === null) {
			const gone = new Promise((resolve) => server.once('exit', resolve))
			server.kill('SIGTERM')
			await gone
		}
		rmSync(folder, { recursive: true, force: true })
	}
	return { url, folder, said: () => said, stop }
}

const ownFolder = () => mkdtempSync(join(tmpdir(), 'doorsill-story-'))

/** The site over a copy of the seeded studio. */
export async function startSite(smtpUrl: string, from: string = template): Promise<Site> {
	const folder = ownFolder()
	cpSync(from, folder, { recursive: true })
	const { url, stop } = await run(folder, smtpUrl, { DEMO: '1' })
	const cast: Seeded = JSON.parse(readFileSync(join(folder, 'cast.json'), 'utf8'))
	return { url, folder, cast, stop }
}

export type EmptySite = { readonly url: string; readonly setUpLink: string; readonly stop: () => Promise<void> }

/** The site over an empty folder, as whoever starts it for the first time has it; the link stands on its console. */
export async function startEmptySite(smtpUrl: string): Promise<EmptySite> {
	const { url, said, stop } = await run(ownFolder(), smtpUrl, { DEMO: '' })
	const [setUpLink] = said().match(/http:\/\/127\.0\.0\.1:\d+\/set-up\?\S+/) ?? []
	if (setUpLink === undefined) throw new Error(`No set-up link on the console: ${said()}`)
	return { url, setUpLink, stop }
}
