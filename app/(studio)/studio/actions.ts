'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { beginProposal } from '@/db/proposals/begin'
import { remind as remindClient } from '@/db/proposals/remind'
import { planSeason } from '@/db/studio/seasons'
import { beginForm, planForm, remindForm } from '@/lib/forms/season-forms'
import { ledgerAsk, ledgerQuery } from '@/lib/season/ledger-ask'

export async function plan(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'plan a season', schema: planForm, page: () => '/studio?plan' },
		async (who, { once, ...season }) => {
			const planned = await planSeason(who, season, stamp(once))
			if (planned.ok) return { to: `/studio/season/${planned.id}` }
			if (isDenied(planned)) return refused(planned)
			return { errors: { quarter: 'That season is planned already.' } }
		},
	)
}

export async function begin(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'change the draft', schema: beginForm, page: () => '/studio' },
		async (who, { client, season }) => {
			const begun = await beginProposal(who, { client, season }, stamp())
			return begun.ok ? { to: `/studio/proposal/${begun.id}` } : refused(begun)
		},
	)
}

/** Reminds one client; a second time within two days only when it is said again. */
export async function remind(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act: 'remind', schema: remindForm, page: () => '/studio' },
		async (who, { season, page, ask = '', ...reminding }) => {
			const reminded = await remindClient(who, reminding, stamp())
			if (isDenied(reminded)) return refused(reminded)
			const shown = ledgerAsk(Object.fromEntries(new URLSearchParams(ask)))
			const query = new URLSearchParams(ledgerQuery(shown, { page: String(page) }))
			if (reminded.ok) {
				wakeSender()
				query.set('reminded', reminding.proposal)
			} else
				query.set(
					reminded.why === 'reminded lately' ? 'again' : 'told',
					reminded.why === 'reminded lately' ? reminding.proposal : reminded.why,
				)
			return { to: `/studio/season/${season}?${query}` }
		},
	)
}
