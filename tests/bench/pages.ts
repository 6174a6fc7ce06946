import { spawn, spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { freePort, startSite } from '../../e2e/site/server'
import { sessionFor } from '../../e2e/site/session'
import prepare from '../../e2e/template'
import { rate } from './load'
import { median, row } from './row'

const rounds = 7
const roundMs = 2000
const next = join('node_modules', 'next', 'dist', 'bin', 'next')
const bareFolder = join('tests', 'bench', 'bare')
const env = { ...process.env, NODE_ENV: 'production' as const, NEXT_TELEMETRY_DISABLED: '1' }

/** The bare page, built and served. */
async function startBare() {
	const built = spawnSync(process.execPath, [next, 'build', bareFolder], { env, encoding: 'utf8' })
	if (built.status !== 0) throw new Error(`The bare page was not built: ${built.stdout}${built.stderr}`)
	const port = await freePort()
	const server = spawn(process.execPath, [next, 'start', bareFolder, '-H', '127.0.0.1', '-p', String(port)], {
		env,
		stdio: 'ignore',
	})
	const url = `http://127.0.0.1:${port}/`
	const isUp = () =>
		fetch(url).then(
			({ ok }) => ok,
			() => false,
		)
	for (let tries = 0; tries < 100 && !(await isUp()); tries += 1)
		await new Promise((resolve) => setTimeout(resolve, 100))
	return { url, stop: () => server.kill('SIGTERM') }
}

/** Scripts that a page loads, compressed. */
async function scriptKb(url: string, cookie: string): Promise<number> {
	const html = await (await fetch(url, { headers: { cookie } })).text()
	const sources = [...new Set([...html.matchAll(/<script[^>]+src="([^"]+)"/g)].map(([, src]) => src ?? ''))]
	const bodies = await Promise.all(sources.map(async (src) => (await fetch(new URL(src, url))).arrayBuffer()))
	return bodies.reduce((sum, body) => sum + gzipSync(Buffer.from(body)).length, 0) / 1024
}

prepare()
const site = await startSite('')
const bare = await startBare()
const cookie = `doorsill=${await sessionFor(site, site.cast.people.bakeryApprover.id)}`
const page = `${site.url}/proposal/${site.cast.proposals.bakery}`
await rate(page, cookie, 1000)
await rate(bare.url, '', 1000)
const guarded = new URL('/guarded', bare.url).href
await rate(guarded, '', 1000)
const ratios: number[] = []
const ratiosGuarded: number[] = []
const ours: number[] = []
for (let round = 0; round < rounds; round += 1) {
	const a = await rate(page, cookie, roundMs)
	const b = (await rate(bare.url, '', roundMs)) + (await rate(bare.url, '', roundMs))
	const c = (await rate(guarded, '', roundMs)) + (await rate(guarded, '', roundMs))
	const again = await rate(page, cookie, roundMs)
	ours.push((a + again) / 2)
	ratios.push((a + again) / b)
	ratiosGuarded.push((a + again) / c)
}
const html = await (await fetch(page, { headers: { cookie } })).text()
const withSpread = (of: readonly number[]) =>
	`${median(of).toFixed(2)} (${Math.min(...of).toFixed(2)}–${Math.max(...of).toFixed(2)})`
row('the client’s page, requests per second', Math.round(median(ours)).toString(), 'told', true)
row(
	'the client’s page against the bare page',
	withSpread(ratios),
	'at least 0.6 with the pictures in',
	median(ratios) >= 0.6,
)
row('the client’s page against a bare page behind a policy with a nonce', withSpread(ratiosGuarded), 'told', true)
row(
	'the client’s page, HTML compressed',
	`${(gzipSync(html).length / 1024).toFixed(1)} kB`,
	'at most 25 kB',
	gzipSync(html).length <= 25 * 1024,
)
const [mine, least] = [await scriptKb(page, cookie), await scriptKb(bare.url, '')]
row(
	'scripts beyond the bare page’s, compressed',
	`${(mine - least).toFixed(1)} kB`,
	'at most 25 kB',
	mine - least <= 25,
)
bare.stop()
await site.stop()
