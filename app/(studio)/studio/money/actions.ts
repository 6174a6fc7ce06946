'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction, type Went } from '@/app/server/studio/studio-action'
import { billNow } from '@/db/money/bills/bill-due'
import { remindAllLate, remindLate } from '@/db/money/remind-late'
import type { Viewer } from '@/lib/access/viewer'
import { billForm, remindLateForm } from '@/lib/forms/rates/money-forms'
import { notRemindedInWords } from '@/lib/money/words/late'
import type { ClientId, Id } from '@/lib/units/id'

const page = () => '/studio/money'

/** Writes what is to be asked for today, of one client or of all. */
export async function billWhatIsDue(form: FormData): Promise<void> {
	await studioAction(form, { act: 'change accounts', schema: billForm, page }, async (who, { client }) => {
		const billed = await billNow(who, { client }, stamp())
		if (!billed.ok) return refused(billed)
		if (billed.invoices > 0) wakeSender()
		const path = client === null ? '/studio/money' : `/studio/money/${client}`
		return { to: `${path}?billed=${billed.invoices}.${billed.credits}` }
	})
}

async function remindOne(who: Viewer, client: ClientId, again: boolean, once: Id<'once'>): Promise<Went> {
	const said = await remindLate(who, { client, again }, stamp(once))
	if (said.ok) {
		wakeSender()
		return { to: '/studio/money?reminded=1' }
	}
	return isDenied(said) ? refused(said) : { errors: { form: notRemindedInWords(said.why) } }
}

/** Reminds one client, or all who are late. */
export async function remindWhoIsLate(form: FormData): Promise<void> {
	await studioAction(form, { act: 'change accounts', schema: remindLateForm, page }, async (who, given) => {
		if (given.client !== null) return remindOne(who, given.client, given.again, given.once)
		const said = await remindAllLate(who, stamp())
		if (!said.ok) return refused(said)
		if (said.reminded > 0) wakeSender()
		return { to: `/studio/money?reminded=${said.reminded}` }
	})
}
