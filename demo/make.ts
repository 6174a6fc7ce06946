import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { readEnv } from '@/app/server/start/env'
import { start } from '@/db/start/start'
import { dayOf, moment } from '@/lib/units/day'
import { studio } from './cast/studio'
import { demoMark, mustBeNoStudio } from './machine.mjs'
import { seed } from './seed'

/**
 * Seeds a data folder for today and leaves the mark by which the site knows it for a demo; `BARE=1` leaves out agreements
 * and money.
 * The cast, by what each is to the story, lies beside it for the tests.
 */
const { dataDir } = readEnv(process.env)
mustBeNoStudio(dataDir)
start(dataDir)
const seeded = await seed({
	today: dayOf(moment(new Date()), studio.timeZone),
	canary: process.env.CANARY === '1',
	agreed: process.env.BARE !== '1',
})
writeFileSync(join(dataDir, 'cast.json'), JSON.stringify(seeded))
writeFileSync(join(dataDir, 'demo'), demoMark)
