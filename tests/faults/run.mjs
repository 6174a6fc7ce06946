import { installPackages, run } from '../../demo/machine.mjs'

/** `npm run faults`: the short faults of `npm test`, many more times. */
installPackages()
process.exit(
	run('node_modules/.bin/vitest', ['run', '--config', 'tests/faults/vitest.config.ts'], {
		env: { FAULT_ROUNDS: process.env.FAULT_ROUNDS ?? '60' },
	}),
)
