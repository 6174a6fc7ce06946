import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { build, findBrowser, findPdfJudges, installPackages, root, run } from '../demo/machine.mjs'

/** `npm test`: everything, from types to the browser. The last line is the sum of it. */
const output = join(root, 'tests', 'output')
const bin = (name) => join('node_modules', '.bin', name)
const node = (script, ...args) => run(process.execPath, [script, ...args])

let passed = 0
let failed = 0
const took = []
/** What did not hold, by name: said again at the end, where the log of a machine is read from. */
const wanting = []

function count(good, bad, names = []) {
	passed += good
	failed += bad
	wanting.push(...names)
}

function step(name, act) {
	process.stdout.write(`\n── ${name}\n`)
	const start = Date.now()
	act()
	took.push(`${name} ${Math.round((Date.now() - start) / 1000)} s`)
}

/** A step that is one check: it holds or it does not. */
const check = (name, act) => step(name, () => (act() === 0 ? count(1, 0) : count(0, 1, [name])))

const readReport = (file) => (existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : undefined)

/** The tests that failed, and the files that could not be run, each with what was said first. */
const failures = ({ testResults = [] } = {}) =>
	testResults
		.filter(({ status }) => status === 'failed')
		.flatMap(({ name, message, assertionResults }) => {
			const tests = assertionResults.filter(({ status }) => status === 'failed')
			const told = tests.map(({ fullName, failureMessages }) => `${fullName}: ${failureMessages.join('\n')}`)
			return (told.length > 0 ? told : [message]).map((words) => `${name.slice(root.length)} ${words.slice(0, 2000)}`)
		})

/** A report that is not there means that the run itself broke: one failure at least. */
function vitest(name, config) {
	step(name, () => {
		const file = join(output, `${name}.json`)
		const status = node(
			bin('vitest'),
			'run',
			'--config',
			config,
			'--reporter=default',
			'--reporter=json',
			`--outputFile.json=${file}`,
		)
		const report = readReport(file)
		const { numPassedTests: good = 0, numFailedTests: bad = 0 } = report ?? {}
		count(good, Math.max(bad, status === 0 ? 0 : 1), status === 0 ? [] : [name, ...failures(report)])
	})
}

function browser() {
	step('browser', () => {
		const file = join(root, 'e2e', 'output', 'report.json')
		rmSync(file, { force: true })
		const status = node(bin('playwright'), 'test', '--config', 'e2e/playwright.config.ts')
		const { expected = 0, unexpected = 0 } = readReport(file)?.stats ?? {}
		count(expected, Math.max(unexpected, status === 0 ? 0 : 1), status === 0 ? [] : ['browser'])
	})
}

installPackages()
rmSync(output, { recursive: true, force: true })
mkdirSync(output, { recursive: true })
check('types', () => node(bin('next'), 'typegen') || node(bin('tsc'), '--noEmit', '-p', '.'))
check(
	'lint',
	() =>
		node(bin('biome'), 'check', '.') ||
		node(
			bin('eslint'),
			'--config',
			'tests/eslint.config.mjs',
			'app',
			'lib',
			'db',
			'tests',
			'e2e',
			'demo',
			'proxy.ts',
			'instrumentation.ts',
		),
)
step('find pdfsig and qpdf', findPdfJudges)
vitest('unit', 'tests/vitest.config.ts')
vitest('faults', 'tests/faults/vitest.config.ts')
step('build', build)
vitest('access', 'tests/access/vitest.config.ts')
step('find a browser', findBrowser)
browser()
for (const words of wanting) process.stdout.write(`\nwanting: ${words}\n`)
process.stdout.write(`\n${took.join(' · ')}\n${passed} passed, ${failed} failed\n`)
process.exit(failed === 0 ? 0 : 1)
