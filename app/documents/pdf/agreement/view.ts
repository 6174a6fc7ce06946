import { type AgreementDocument, documentHash } from '@/lib/agreement/document/document'
import { dueInWords, planInWords } from '@/lib/agreement/instalment/words'
import type { Signature } from '@/lib/agreement/signing/signature'
import { visitWords } from '@/lib/agreement/template/filling'
import { fullDay } from '@/lib/format/day'
import { momentWords } from '@/lib/format/moment'
import { moneyFormat } from '@/lib/format/money'
import { capital, list } from '@/lib/format/words'
import { seasonName } from '@/lib/season/season'
import type { Drawing } from '../drawing'
import type { AgreementPaper, Signed } from './input'
import { recordView } from './record-view'

function facts(document: AgreementDocument, { say }: Drawing) {
	const { places, containers, seasons } = document
	const money = moneyFormat(document.currency)
	const nameOf = (id: string) => containers.find((each) => each.id === id)?.name ?? 'a container'
	return {
		places: places.map(({ id, name, address }) => ({
			key: id,
			name: say(name),
			address: say(address),
			containers: containers
				.filter(({ place }) => place === id)
				.map((each) => ({ key: each.id, name: say(each.name), words: say(each.words) })),
		})),
		seasons: seasons.map((season, at) => ({
			key: `season ${at}`,
			quarter: season.quarter,
			name: capital(seasonName(season)),
			containers: say(list(season.containers.map(nameOf))) || 'none named',
			visits: visitWords(season),
			price: season.price.is === 'fixed' ? money(season.price.cents) : 'quoted each season',
		})),
		total: money(document.totalCents),
	}
}

function payment({ plan, instalments, currency }: AgreementDocument) {
	const money = moneyFormat(currency)
	return {
		plan: capital(planInWords(plan)),
		rows: instalments.map(({ number, cents, due }) => ({
			number: String(number),
			due: capital(dueInWords(due)),
			amount: money(cents),
		})),
	}
}

function signatureView(it: Signature, timeZone: string, { say }: Drawing) {
	switch (it.is) {
		case 'on a screen':
			return {
				for: 'For the client',
				name: say(it.typedName),
				stroke: it.stroke,
				how: `on a screen, ${momentWords(it.signedAt, timeZone)}`,
			}
		case 'on paper':
			return { for: 'For the client', name: say(it.signer), stroke: null, how: `on paper, ${fullDay(it.signedOn)}` }
		case 'by the studio':
			return {
				for: 'For the studio',
				name: say(it.name),
				stroke: null,
				how: `by issuing it, ${momentWords(it.signedAt, timeZone)}`,
			}
		default:
			return it satisfies never
	}
}

const consentView = ({ consent }: Signed, { say }: Drawing) =>
	consent === null
		? null
		: {
				version: consent.version,
				points: consent.points.map(({ key, title, says }) => ({ key, title: say(title), says: say(says) })),
				sentences: [consent.agrees, consent.intends].map(say),
			}

/** Every word of the file, finished, in letters that can be drawn. */
export function agreementView(input: AgreementPaper, drawing: Drawing) {
	const { document, signed } = input
	const { say } = drawing
	return {
		hash: documentHash(document),
		studio: say(document.studio.name),
		signedBy: say(document.studio.signedBy),
		client: say(document.client.name),
		term: `${fullDay(document.from)} to ${fullDay(document.to)}`,
		number: document.number,
		supersedes: document.supersedes,
		...facts(document, drawing),
		payment: payment(document),
		clauses: document.clauses.map(({ key, title, text }) => ({
			key,
			title: say(title),
			paragraphs: say(text)
				.split(/\n+/)
				.map((words, at) => ({ key: `${key} ${at}`, words })),
		})),
		signatures: (signed?.signatures ?? []).map((it) => signatureView(it, input.timeZone, drawing)),
		consent: signed === null ? null : consentView(signed, drawing),
		record: signed === null ? null : recordView(document, signed, input.timeZone, drawing),
		hasReplaced: drawing.hasReplaced(),
	}
}
export type AgreementView = ReturnType<typeof agreementView>
