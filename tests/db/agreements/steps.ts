import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { type IssuedAs, issueAgreement } from '@/db/agreements/issue'
import { recordPaper } from '@/db/agreements/studio/paper'
import { clientPage } from '@/db/clients/read-clients'
import { aYear } from '@/demo/cast/agreement'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { Terms } from '@/lib/agreement/terms'
import { type Day, day, type Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { found, type Studio, stranger } from '../stage/studio'

export type AgreementId = Id<'agreement'>

/** What a test of agreements needs done before its own act; each step is the designer's and has to succeed. */
export function agreementsOf(of: Studio) {
	const termsFor = async (client: ClientKey, from = day('2026-12-01'), to = day('2027-11-30')): Promise<Terms> => {
		const { places } = found(await clientPage(await of.as('designer'), of.cast().clients[client].id))
		return aYear(
			from,
			to,
			places.flatMap(({ containers }) => containers.map(({ id }) => id)),
		)
	}
	const begun = async (client: ClientKey, terms?: Terms, renews?: AgreementId): Promise<AgreementId> => {
		const beginning = { client: of.cast().clients[client].id, terms: terms ?? (await termsFor(client)) }
		const like = renews === undefined ? beginning : { ...beginning, renews }
		return must(client, await beginAgreement(await of.as('designer'), like, of.stamp())).id
	}
	const versionOf = (agreement: AgreementId) =>
		stranger(of.folder(), (sqlite) =>
			found(
				sqlite
					.prepare<[string], number>('SELECT version FROM agreement_draft WHERE agreement_id = ?')
					.pluck()
					.get(agreement),
			),
		)
	const issue = async (agreement: AgreementId, signBy: Day = day('2026-10-30'), at?: Moment): Promise<IssuedAs> =>
		issueAgreement(
			await of.as('designer'),
			{ agreement, version: versionOf(agreement), signBy, once: of.once() },
			of.stamp(at),
		)
	const issued = async (client: ClientKey, terms?: Terms, signBy?: Day) => {
		const agreement = await begun(client, terms)
		return { agreement, ...must(client, await issue(agreement, signBy)) }
	}
	return {
		issued,
		/** A year later, so that it clashes with no other of the test. */
		signedOnPaper: async (client: ClientKey) => {
			const made = await issued(client, await termsFor(client, day('2027-12-01'), day('2028-11-30')))
			const scan = Buffer.from('a picture of a page')
			const signed = { signer: 'Somebody', signedOn: day('2026-10-06'), scan, once: of.once() }
			const recording = { agreement: made.agreement, document: made.hash, ...signed }
			must(client, await recordPaper(await of.as('designer'), recording, of.stamp()))
			return made
		},
		termsFor,
		begun,
		versionOf,
		issue,
		save: async (agreement: AgreementId, terms: Terms) =>
			must(
				'save',
				await saveTerms(await of.as('designer'), { agreement, version: versionOf(agreement), terms }, of.stamp()),
			),
	}
}
