import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { readAgreement } from '@/db/agreements/read'
import { agreeToRecords } from '@/db/agreements/signing/consent'
import { markOpened } from '@/db/agreements/signing/open'
import { type Signing, signAgreement } from '@/db/agreements/signing/sign'
import { clientPage } from '@/db/clients/read-clients'
import { sessionAdapter } from '@/db/sign-in/adapter'
import type { ClientKey } from '@/demo/cast/clients'
import { must } from '@/demo/play/must'
import type { AnyPersonKey } from '@/demo/play/stage'
import { termsWith } from '@/e2e/site/issue-to'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import type { AgreementPage } from '@/lib/agreement/signing/page'
import type { Terms } from '@/lib/agreement/terms'
import { day, type Moment } from '@/lib/units/day'
import type { Id } from '@/lib/units/id'
import { found, type Studio } from './studio'

export const writeTo = 'studio@localhost.example'

/** What a test of agreements needs done before its own act; each step has to succeed. */
export function signingOf(of: Studio) {
	const termsFor = async (key: ClientKey) => {
		const { places } = found(await clientPage(await of.as('designer'), of.cast().clients[key].id))
		return termsWith(places.flatMap(({ containers }) => containers.slice(0, 2).map(({ id }) => id)))
	}
	const begin = async (key: ClientKey, change: (terms: Terms) => Terms = (terms) => terms) => {
		const beginning = { client: of.cast().clients[key].id, terms: change(await termsFor(key)) }
		return must(key, await beginAgreement(await of.as('designer'), beginning, of.stamp())).id
	}
	const issue = async (id: Id<'agreement'>, version = 1, at?: Moment) =>
		must(
			'issue',
			await issueAgreement(
				await of.as('designer'),
				{ agreement: id, version, signBy: day('2026-11-20'), once: of.once() },
				of.stamp(at),
			),
		)
	const issued = async (key: ClientKey, change?: (terms: Terms) => Terms) => {
		const id = await begin(key, change)
		await issue(id)
		return id
	}
	const amend = async (id: Id<'agreement'>, key: ClientKey, version = 1) => {
		const terms = await termsFor(key)
		const changed = { ...terms, said: { ...terms.said, law: 'the Commonwealth of Ostmark' } }
		const saving = { agreement: id, version, terms: changed }
		await issue(id, must('save', await saveTerms(await of.as('designer'), saving, of.stamp())).version)
	}
	const page = async (id: Id<'agreement'>, who: AnyPersonKey = 'designer'): Promise<AgreementPage> =>
		found(await readAgreement(await of.as(who), id, of.stamp()))
	/** A session that began by a link or a code; what its cookie holds. */
	const session = async (who: AnyPersonKey, at = of.cast().now, by: 'link' | 'code' = 'link') => {
		const arrival = { browser: `browser of ${who}`, words: 'a test', by, stamp: of.stamp(at) }
		const token = `token ${of.once()}`
		const userId = of.cast().people[who].id
		await sessionAdapter(() => new Date(at), arrival).createSession({ sessionToken: token, userId })
		return token
	}
	const open = async (id: Id<'agreement'>, who: AnyPersonKey, as: 'page' | 'PDF' = 'page', at?: Moment) =>
		markOpened(await of.as(who), { agreement: id, as }, of.stamp(at))
	const consenting = async (id: Id<'agreement'>) => {
		const { hash, document } = await page(id)
		const { studio, client } = found(document)
		const shown = consentFor(defaultConsent, { studio: studio.name, client: client.name, writeTo })
		return { agreement: id, document: hash, once: of.once(), words: consentHash(shown), writeTo }
	}
	const agree = async (id: Id<'agreement'>, who: AnyPersonKey) =>
		must('agree', await agreeToRecords(await of.as(who), await consenting(id), of.stamp()))
	const signing = async (id: Id<'agreement'>, who: AnyPersonKey): Promise<Signing> => ({
		...{ agreement: id, document: (await page(id)).hash, once: of.once(), token: await session(who) },
		...{ name: 'Maud Marrowby', stroke: null, sender: '198.51.100.7', browser: 'Firefox on Android' },
	})
	/** Read and agreed to. */
	const ready = async (id: Id<'agreement'>, who: AnyPersonKey) => {
		await open(id, who)
		await agree(id, who)
		return signing(id, who)
	}
	const sign = async (who: AnyPersonKey, given: Signing, at?: Moment) =>
		signAgreement(await of.as(who), given, of.stamp(at))
	return { begin, issue, issued, amend, page, session, open, consenting, agree, signing, ready, sign }
}
