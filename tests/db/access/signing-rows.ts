import { agreementsOf } from '@/db/agreements/of-client'
import { nextPaperDue } from '@/db/agreements/papers/due'
import { keepPaper, sweepPapers } from '@/db/agreements/papers/keep'
import { knownPapers } from '@/db/agreements/papers/known'
import { readPaper } from '@/db/agreements/papers/read'
import { readAgreement } from '@/db/agreements/read'
import { agreeToRecords } from '@/db/agreements/signing/consent'
import { declineAgreement } from '@/db/agreements/signing/decline'
import { markOpened } from '@/db/agreements/signing/open'
import { signAgreement } from '@/db/agreements/signing/sign'
import { maySign } from '@/db/agreements/signing/step'
import { mailedAgreement } from '@/db/outbox/mailed-agreement'
import { sessionAdapter } from '@/db/sign-in/adapter'
import { ownProof } from '@/db/sign-in/proof'
import type { Viewer } from '@/lib/access/viewer'
import { consentFor, consentHash } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'
import { hash } from '@/lib/record/hash'
import { issued } from '../../lib/agreement/document/issued'
import { approverAnswers, type House, type Row, row, systemReads, type Things, to } from './outcomes'

const readers = to('value', 'none', 'value', 'value', 'none', 'none', 'value')
const nobodys = to('none', 'none', 'none', 'none', 'none', 'none', 'none')
const token = 'the token of whoever may sign'
const writeTo = 'studio@localhost.example'

const head = ({ agreement, document }: Things, { once }: House) => ({ agreement, document, once: once() })

/** As the page of whoever sees it has the words; of one who does not, none. */
async function consenting(viewer: Viewer, things: Things, house: House) {
	const page = await readAgreement(viewer, things.agreement, house.stamp())
	const names = page?.document && { studio: page.document.studio.name, client: page.document.client.name }
	const words = names && consentHash(consentFor(defaultConsent, { ...names, writeTo }))
	return { ...head(things, house), words: words ?? hash('f'.repeat(64)), writeTo }
}

/** Opens it and agrees, with a session of now: for who may sign alone, so that a refusal has written nothing. */
async function ready(viewer: Viewer, things: Things, house: House): Promise<void> {
	if (viewer.is !== 'contact' || (await maySign(viewer, things.agreement, house.stamp())) !== null) return
	await markOpened(viewer, { agreement: things.agreement, as: 'page' }, house.stamp())
	await agreeToRecords(viewer, await consenting(viewer, things, house), house.stamp())
	const { at, ...more } = house.stamp()
	const arrival = { browser: 'a test’s', words: 'a test', by: 'code', stamp: { at, ...more } } as const
	const adapter = sessionAdapter(() => new Date(at), arrival)
	await adapter.createSession({ sessionToken: token, userId: viewer.person })
}

/** What a client and the machinery do with an agreement that waits for a signature. */
export const signingRows: Readonly<Record<string, Row>> = {
	'agreements/read readAgreement': row(
		'client',
		readers,
	)((viewer, { agreement }, { stamp }) => readAgreement(viewer, agreement, stamp())),
	'agreements/of-client agreementsOf': row(
		'client',
		readers,
	)((viewer, { client }, { stamp }) => agreementsOf(viewer, client, stamp())),
	'agreements/papers/due nextPaperDue': row('studio', systemReads)((viewer) => nextPaperDue(viewer)),
	'agreements/papers/keep keepPaper': row(
		'client',
		systemReads,
	)((viewer, { agreement, client, document: its }, { stamp }) => {
		const document = { ...issued(), agreement, client: { id: client, name: 'Marrowby Bakery' } }
		const made = { hash: its, document, head: { seq: 1, hash: its }, bytes: Buffer.from('%PDF-') }
		return keepPaper(viewer, made, stamp())
	}),
	'agreements/papers/keep sweepPapers': row('studio', nobodys)((viewer) => sweepPapers(viewer)),
	'agreements/papers/known knownPapers': row(
		'studio',
		nobodys,
	)(async (viewer) => (await knownPapers(viewer, hash('f'.repeat(64)))).papers),
	'agreements/papers/read readPaper': row(
		'client',
		to('value', 'hidden', 'value', 'forbidden', 'hidden', 'hidden', 'value'),
	)((viewer, { agreement }, { stamp }) => readPaper(viewer, { agreement, document: null }, stamp())),
	'agreements/signing/consent agreeToRecords': row(
		'client',
		approverAnswers,
	)(async (viewer, things, house) => {
		if ((await maySign(viewer, things.agreement, house.stamp())) === null)
			await markOpened(viewer, { agreement: things.agreement, as: 'PDF' }, house.stamp())
		return agreeToRecords(viewer, await consenting(viewer, things, house), house.stamp())
	}),
	'agreements/signing/decline declineAgreement': row(
		'client',
		approverAnswers,
	)((viewer, things, house) =>
		declineAgreement(viewer, { ...head(things, house), reason: 'No.', browser: 'a test' }, house.stamp()),
	),
	'agreements/signing/open markOpened': row(
		'client',
		to('none', 'none', 'done', 'none', 'none', 'none', 'none'),
	)((viewer, { agreement }, { stamp }) => markOpened(viewer, { agreement, as: 'page' }, stamp())),
	'agreements/signing/sign signAgreement': row(
		'client',
		approverAnswers,
	)(async (viewer, things, house) => {
		await ready(viewer, things, house)
		const from = { token, sender: '198.51.100.7', browser: 'a test' }
		const signing = { ...head(things, house), name: 'Maud Marrowby', stroke: null, ...from }
		return signAgreement(viewer, signing, house.stamp())
	}),
	'agreements/signing/step maySign': row(
		'client',
		approverAnswers,
	)((viewer, { agreement }, { stamp }) => maySign(viewer, agreement, stamp())),
	'outbox/mailed-agreement mailedAgreement': row(
		'client',
		systemReads,
	)((viewer, { agreement, person }, { stamp }) => mailedAgreement(viewer, { agreement, number: 1, person }, stamp())),
	'sign-in/proof ownProof': row('studio', nobodys)((viewer) => ownProof(viewer, 'no session of theirs')),
}
