import { randomBytes } from 'node:crypto'
import { readEnv } from '@/app/server/start/env'
import { siteKey } from '@/app/server/start/key'
import { closeDatabase, openDatabase } from '@/db/open'
import { keepToken, linkHashOf, personWith } from '@/db/sign-in/token'
import { sha256 } from '@/lib/record/hash'
import { people } from './cast/people'
import { staff } from './cast/studio'

/** Who is who, in the order in which one would try them. */
const cast = [
	['designer', staff.designer],
	['business approver (bakery)', people.bakeryApprover],
	['business viewer (bakery)', people.bakeryViewer],
	['household, three palettes', people.clapboardApprover],
	['household, one palette', people.stuccoApprover],
	['helper', staff.helper],
] as const

const { dataDir, siteUrl } = readEnv(process.env)
const secret = siteKey(dataDir)
const say = (line: string) => process.stdout.write(`${line}\n`)

async function linkFor(address: string): Promise<string> {
	const person = await personWith(address)
	if (person === undefined) throw new Error(`links: nobody has the address ${address}`)
	const token = randomBytes(32).toString('base64url')
	const nothing = sha256(randomBytes(32))
	await keepToken(person, { linkHash: linkHashOf(token, secret), codeHash: nothing, askHash: nothing }, new Date())
	return `${siteUrl}/sign-in/confirm?token=${token}`
}

openDatabase(dataDir)
say('')
for (const [role, { address }] of cast) say(`sign in · ${role} · ${await linkFor(address)}`)
say('')
say('Each link works once, for ten minutes; for fresh ones: npm run demo -- --links')
say(`Look first at the season page (designer), then at the bakery’s design on a phone (business approver).`)
say(`Mail that was sent: ${siteUrl}/demo/mail`)
closeDatabase()
