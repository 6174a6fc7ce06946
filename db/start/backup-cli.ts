import { moment } from '@/lib/units/day'
import { backUp } from '../house/backup'
import { closeDatabase, openDatabase } from '../open'
import { viewerOf } from '../viewer'

/** `npm run backup`: a whole copy of the studio's file, made while the site may be running. */
openDatabase(process.env.DATA_DIR ?? '.doorsill/data')
const file = await backUp(await viewerOf('system'), { at: moment(new Date()) })
closeDatabase()
process.stdout.write(`${file}\n`)
