import { spawn, spawnSync } from 'node:child_process'
import { createHash, randomBytes } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** What both commands need of a machine: packages, a build, a browser. Node's own modules alone, for there may be no others yet. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)))
const own = join(root, '.doorsill')

const hashOf = (...parts) => parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest('hex')

export function run(command, args, { env = {}, quiet = false } = {}) {
	const { status } = spawnSync(command, args, {
		cwd: root,
		stdio: quiet ? ['ignore', 'ignore', 'inherit'] : 'inherit',
		env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
	})
	return status ?? 1
}

export function stop(message) {
	process.stderr.write(`${message}\n`)
	process.exit(1)
}

function marked(name, value, act) {
	const file = join(own, name)
	if (existsSync(file) && readFileSync(file, 'utf8') === value) return
	act()
	mkdirSync(own, { recursive: true })
	writeFileSync(file, value)
}

/** What a demo is known by: a file of this text in its data folder. */
export const demoMark = 'Every name in here is invented.\n'

function isDemo(folder) {
	try {
		return readFileSync(join(folder, 'demo'), 'utf8') === demoMark
	} catch {
		return false
	}
}

/** @throws when there is a studio in the folder that is no demo */
export function mustBeNoStudio(folder) {
	if (existsSync(join(folder, 'studio.db')) && !isDemo(folder))
		throw new Error(
			`${folder} holds a studio that is no demo, or what a demo left that was broken off. Nothing was changed: set DATA_DIR to another folder, or remove it yourself.`,
		)
}

/** Removes a demo with all that was done in it; whatever is no demo stays. */
export function removeDemo(folder) {
	if (isDemo(folder)) rmSync(folder, { recursive: true })
}

/** Packages as the lock has them; nothing to do when it has not changed since. */
export function installPackages() {
	const [major, minor] = process.versions.node.split('.').map(Number)
	if (major < 20 || (major === 20 && minor < 19))
		stop(`Doorsill needs Node 20.19 or newer; this is ${process.versions.node}.`)
	const lock = hashOf(readFileSync(join(root, 'package-lock.json')), process.version)
	if (!existsSync(join(root, 'node_modules'))) writeIfThere(join(own, 'lock'), '')
	marked('lock', lock, () => {
		process.stdout.write('Installing packages …\n')
		if (run('npm', ['ci', '--no-audit', '--no-fund'], { env: { PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD: '1' } }) !== 0)
			stop('npm ci failed.')
	})
}

function writeIfThere(file, value) {
	if (existsSync(file)) writeFileSync(file, value)
}

/** The key that seals what server actions carry: one for build and run. */
export function actionKey() {
	if (process.env.NEXT_SERVER_ACTIONS_ENCRYPTION_KEY) return process.env.NEXT_SERVER_ACTIONS_ENCRYPTION_KEY
	const file = join(own, 'action-key')
	mkdirSync(own, { recursive: true })
	if (!existsSync(file)) writeFileSync(file, randomBytes(32).toString('base64'), { mode: 0o600 })
	return readFileSync(file, 'utf8')
}

function* filesIn(folder) {
	for (const entry of readdirSync(folder, { withFileTypes: true }).toSorted((a, b) => (a.name < b.name ? -1 : 1))) {
		const path = join(folder, entry.name)
		if (entry.isDirectory()) yield* filesIn(path)
		else yield path
	}
}

function sourceHash() {
	const single = [
		'package-lock.json',
		'next.config.mjs',
		'proxy.ts',
		'instrumentation.ts',
		'tsconfig.json',
		'.postcssrc.json',
	]
	const files = [
		...single.map((name) => join(root, name)),
		...['app', 'lib', 'db'].flatMap((name) => [...filesIn(join(root, name))]),
	]
	return hashOf(actionKey(), ...files.flatMap((file) => [file.slice(root.length), readFileSync(file)]))
}

const next = join('node_modules', 'next', 'dist', 'bin', 'next')

/** What `npm start` starts; a connection that nobody uses stays open longer than a proxy or an agent keeps it, so that none is closed under a request. */
export const startArguments = [next, 'start', '-H', '127.0.0.1', '--keepAliveTimeout', '70000']

/** The production build; nothing to do when no source has changed since. */
export function build() {
	if (!existsSync(join(root, '.next', 'BUILD_ID'))) writeIfThere(join(own, 'build'), '')
	marked('build', sourceHash(), () => {
		process.stdout.write('Building …\n')
		if (run(process.execPath, [next, 'build'], { env: { NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: actionKey() } }) !== 0)
			stop('The build failed.')
	})
}

/** Starts the built site on loopback; resolves with the process once it answers. */
export async function serve(env, port) {
	const server = spawn(process.execPath, [...startArguments, '-p', String(port)], {
		cwd: root,
		stdio: ['ignore', 'ignore', 'inherit'],
		env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', NEXT_SERVER_ACTIONS_ENCRYPTION_KEY: actionKey(), ...env },
	})
	const gone = new Promise((_, reject) =>
		server.once('exit', (code) => reject(new Error(`The server ended with ${code}.`))),
	)
	await Promise.race([answers(port), gone])
	return server
}

async function answers(port) {
	for (let tries = 0; tries < 120; tries += 1) {
		const isUp = await fetch(`http://127.0.0.1:${port}/sign-in`).then(
			(response) => response.status === 200,
			() => false,
		)
		if (isUp) return
		await new Promise((resolve) => setTimeout(resolve, 250))
	}
	throw new Error('The server did not answer within half a minute.')
}

const system = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome-stable']

/** A browser for the tests: the system's Chromium, else Playwright's own, else (in CI) Debian's. Undefined means Playwright's own. */
export function findBrowser() {
	const found = () => system.find((path) => existsSync(path))
	if (found()) return found()
	const install = ['node_modules/.bin/playwright', 'install', 'chromium']
	if (run(process.execPath, install, { quiet: true }) === 0) return undefined
	if (process.env.CI === 'true') {
		run('apt-get', ['update'], { quiet: true })
		run('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], { quiet: true })
	}
	return found() ?? stop('No browser: install Chromium, then run this again.')
}

const judges = ['pdfsig', 'qpdf']

/** What reads the PDF files that tests make: Debian's poppler-utils and qpdf; in CI they are installed. */
export function findPdfJudges() {
	const missing = () => judges.filter((name) => spawnSync(name, ['--version'], { stdio: 'ignore' }).error !== undefined)
	if (missing().length > 0 && process.env.CI === 'true') {
		run('apt-get', ['update'], { quiet: true })
		run('apt-get', ['install', '-y', '--no-install-recommends', 'poppler-utils', 'qpdf'], { quiet: true })
	}
	const names = missing()
	if (names.length > 0)
		stop(`Not found: ${names.join(' and ')}. Install poppler-utils and qpdf (Debian's names), then run this again.`)
}
