import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { markOpened } from '@/db/agreements/signing/open'
import { viewerOf } from '@/db/viewer'
import { stampsFrom } from '@/demo/stamps'
import { issuedTo } from '@/e2e/site/agreement'
import { inRecordOf } from '@/e2e/site/session'
import { moment } from '@/lib/units/day'

/** `tsx issue-agreements.ts <folder>`: an agreement to sign for some of the cast, opened by one who may, before the site is started. */
const [, , folder = ''] = process.argv
const site = { folder, cast: JSON.parse(readFileSync(join(folder, 'cast.json'), 'utf8')) }
const now = moment(new Date())
const stamps = stampsFrom('agreements opened')

for (const [key, who] of [
	['bakery', 'bakeryApprover'],
	['dental', 'dentalApprover'],
	['vet', 'twoDoors'],
	['fieldstone', 'fieldstoneApprover'],
	['clapboard', 'clapboardApprover'],
] as const) {
	const agreement = await issuedTo(site, key)
	await inRecordOf(site, async () => {
		await markOpened(await viewerOf(site.cast.people[who].id), { agreement, as: 'page' }, stamps(now))
	})
}
