import { join } from 'node:path'
import { build, installPackages, run } from '../../demo/machine.mjs'

/** `npm run bench`: rows of name · figure · aim · ok or short. */
installPackages()
build()
const script = (name) => run(process.execPath, ['--import', 'tsx', join('tests', 'bench', name)])
process.exit(
	script('pricing.ts') ||
		script('design.ts') ||
		script('paper.ts') ||
		script('statement.ts') ||
		script('season.ts') ||
		script('renewing.ts') ||
		script('pages.ts'),
)
