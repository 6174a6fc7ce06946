import { moment } from '@/lib/units/day'
import { backUp } from '../house/backup'
import { viewerOf } from '../viewer'
import { openStudio, program } from './program'

/** `npm run backup`: a whole copy of the studio's file, made while the site may be running. */
await program(async () => {
	openStudio()
	const file = await backUp(await viewerOf('system'), { at: moment(new Date()) })
	process.stdout.write(`${file}\n`)
})
