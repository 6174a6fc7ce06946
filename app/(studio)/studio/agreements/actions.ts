'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { beginAgreementFor } from '@/db/agreements/studio/begin-for'
import { remindSigners as remindEverybody, remindSigner as remindOne } from '@/db/agreements/studio/remind'
import { beginAgreementForm, remindSignerForm, remindSignersForm } from '@/lib/agreement/studio/form/act-forms'

/** Begins an agreement with a client, from what is known of them. */
export async function beginAgreement(form: FormData): Promise<void> {
	const page = ({ client }: { client?: unknown }) => `/studio/clients/${String(client)}`
	await studioAction(
		form,
		{ act: 'change agreements', schema: beginAgreementForm, page },
		async (who, { once, client }) => {
			const begun = await beginAgreementFor(who, client, stamp(once))
			return begun.ok ? { to: `/studio/agreements/${begun.id}` } : refused(begun)
		},
	)
}

/** Reminds one who has to sign; a second time within two days only when it is said again. */
export async function remindSigner(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change agreements', schema: remindSignerForm, page: () => '/studio/agreements' },
		async (who, { year, ...reminding }) => {
			const reminded = await remindOne(who, reminding, stamp())
			if (isDenied(reminded)) return refused(reminded)
			const { agreement } = reminding
			const query = new URLSearchParams(year === '' ? {} : { year })
			if (reminded.ok) {
				wakeSender()
				query.set('reminded', agreement)
			} else if (reminded.why === 'reminded lately') query.set('again', agreement)
			else query.set('told', reminded.why)
			return { to: `/studio/agreements${year === '' ? `/${agreement}` : ''}?${query}` }
		},
	)
}

/** Reminds all who have to sign; whoever was reminded within two days only when it is ticked. */
export async function remindSigners(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change agreements', schema: remindSignersForm, page: () => '/studio/agreements' },
		async (who, { year, ...reminding }) => {
			const told = await remindEverybody(who, reminding, stamp())
			if (!told.ok) return refused(told)
			if (told.reminded > 0) wakeSender()
			return { to: `/studio/agreements?${new URLSearchParams({ year, all: `${told.reminded}.${told.lately}` })}` }
		},
	)
}
