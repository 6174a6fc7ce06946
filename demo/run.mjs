import { existsSync, mkdirSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { build, installPackages, mustBeNoStudio, removeDemo, root, run, serve, stop } from './machine.mjs'

/** `npm run demo`: builds, seeds a studio of our invention once, serves it on loopback and prints a link per person. */
const port = Number(process.env.PORT ?? 3000)
const folder = resolve(process.env.DATA_DIR ?? join(root, '.doorsill', 'demo'))
const env = {
	DEMO: '1',
	DATA_DIR: folder,
	PORT: String(port),
	SITE_URL: `http://127.0.0.1:${port}`,
	LOG_FILE: join(folder, 'log', 'site.log'),
	SMTP_URL: '',
}
const script = (name) => run(process.execPath, ['--import', 'tsx', join('demo', name)], { env })

try {
	mustBeNoStudio(folder)
} catch ({ message }) {
	stop(message)
}
installPackages()
if (process.argv.includes('--links')) process.exit(script('links.ts'))
build()
if (process.argv.includes('--fresh')) removeDemo(folder)
mkdirSync(folder, { recursive: true })
if (!existsSync(join(folder, 'demo')) && script('make.ts') !== 0) process.exit(1)
const server = await serve(env, port)
process.on('SIGINT', () => server.kill('SIGTERM'))
process.on('SIGTERM', () => server.kill('SIGTERM'))
server.on('exit', (code) => process.exit(code ?? 0))
script('links.ts')
