import { eq } from 'drizzle-orm'
import { recordPayment } from '@/db/money/acts/record-payment'
import { billNow } from '@/db/money/bills/bill-due'
import { openDatabase, write } from '@/db/open'
import { client, outbox, person } from '@/db/schema'
import { viewerOf } from '@/db/viewer'
import { clients } from '@/demo/cast/clients'
import { staff } from '@/demo/cast/studio'
import { stampsFrom } from '@/demo/stamps'
import { cents } from '@/lib/units/cents'
import { dayOf, moment } from '@/lib/units/day'

/** Four were asked for their autumn, and each has paid a little, the practice more than was due; the mails of it went out. */
const [folder = ''] = process.argv.slice(2)
openDatabase(folder)
const stamp = stampsFrom('asked for')(moment(new Date()))
const rowsOf = () =>
	write((tx) => ({ people: tx.select().from(person).all(), clients: tx.select().from(client).all() }))
const known = rowsOf()
const designer = known.people.find(({ email }) => email === staff.designer.address)
if (designer === undefined) throw new Error('There is no designer.')
const viewer = await viewerOf(designer.id)
const before = write((tx) => tx.select({ id: outbox.id }).from(outbox).all())
const old = new Set<string>(before.map(({ id }) => id))
for (const key of ['bakery', 'dental', 'clapboard', 'stucco'] as const) {
	const of = known.clients.find(({ name }) => name === clients[key].name)
	if (of === undefined) throw new Error(key)
	await billNow(viewer, { client: of.id }, stamp)
	const paid = {
		on: dayOf(stamp.at, 'America/New_York'),
		cents: cents(key === 'dental' ? 400_000 : 1200),
		means: 'check',
		reference: '=1+1',
	} as const
	await recordPayment(viewer, { ...paid, client: of.id, invoice: null, keepRest: key === 'dental' }, stamp)
}
write((tx) => {
	for (const { id } of tx.select({ id: outbox.id }).from(outbox).all())
		if (!old.has(id)) tx.update(outbox).set({ sentAt: stamp.at }).where(eq(outbox.id, id)).run()
})
