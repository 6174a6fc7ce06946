import { verify } from '../record/verify'
import { viewerOf } from '../viewer'
import { openStudio, program } from './program'

/** `npm run verify`: goes through the whole record and names the first line that does not hold. */
await program(async () => {
	openStudio()
	const found = await verify(await viewerOf('system'))
	const { lines, head, broken, erased } = found ?? { lines: 0, head: null, broken: null, erased: 0 }
	const where =
		broken === null ? 'whole' : `broken${broken.seq === null ? '' : ` at line ${broken.seq}`}: ${broken.why}`
	process.stdout.write(`${lines} lines, ${where}; ${erased} with erased words; head ${head ?? 'none'}\n`)
	process.exitCode = broken === null ? 0 : 1
})
