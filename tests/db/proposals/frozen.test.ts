import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { listMaterials, saveMaterial } from '@/db/catalogue/materials'
import { clientPage } from '@/db/clients/read-clients'
import { saveClient } from '@/db/clients/save-client'
import { saveContainer } from '@/db/clients/save-container'
import { savePlace } from '@/db/clients/save-place'
import { write } from '@/db/open'
import { approve } from '@/db/proposals/answers/approve'
import { priceDraft } from '@/db/proposals/desk/price-draft'
import { readOffer } from '@/db/proposals/read-offer'
import { keepRates } from '@/db/studio/rates'
import { saveSettings } from '@/db/studio/studio'
import { keysOf } from '@/demo/play/keys'
import { must } from '@/demo/play/must'
import type { Viewer } from '@/lib/access/viewer'
import { wordsIn } from '@/lib/pricing/cost/words'
import type { Job } from '@/lib/pricing/job'
import { jobInputsSchema } from '@/lib/pricing/job-schema'
import { price } from '@/lib/pricing/price'
import { type Choice, everything } from '@/lib/pricing/quote/choice'
import { quote } from '@/lib/pricing/quote/quote'
import { defaultRates, ratesSchema } from '@/lib/pricing/rates'
import { emptyDraft } from '@/lib/proposal/draft'
import { type Offer, offerSchema } from '@/lib/proposal/offer/offer'
import { palettesOf, pricesOf } from '@/lib/proposal/picked/palettes'
import type { ClientId } from '@/lib/units/id'
import { judge } from '../../reference/quote-judge/judge'
import { hollyTraits } from '../catalogue/holly-traits'
import { found, stranger, studio } from '../stage/studio'
import { stepsOf } from './steps'

const of = studio()
const { draft, idOf, page, redraft, answering } = stepsOf(of)

const json = <T>(schema: z.ZodType<T>) => z.string().transform((text) => schema.parse(JSON.parse(text)))
const keptSchema = z.array(
	z.object({
		hash: z.string(),
		offer: json(offerSchema),
		costing: json(z.array(z.strictObject({ key: z.string(), job: jobInputsSchema }))),
		rates: json(ratesSchema),
		option: z.string().nullable(),
		places: json(z.record(z.string(), z.string())).nullable(),
		extras: json(z.array(z.string())).nullable(),
		leftOut: json(z.array(z.string())).nullable(),
		total: z.int().nullable(),
	}),
)

/** Every revision as it lies in the file, read past the house. */
const kept = () =>
	keptSchema.parse(
		stranger(of.folder(), (sqlite) =>
			sqlite
				.prepare(
					`SELECT revision.hash, offer.body AS offer, costing.body AS costing, rates.document AS rates,
						answer.option, answer.places, answer.extras, answer.left_out AS leftOut, answer.total_cents AS total
					FROM revision JOIN sealed_text AS offer ON offer.hash = offer_hash
						JOIN sealed_text AS costing ON costing.hash = costing_hash
						JOIN rates ON version = rates_version
						LEFT JOIN answer ON answer.revision_id = revision.id`,
				)
				.all(),
		),
	)

const subsets = <T>(all: readonly T[]): T[][] =>
	all.reduce<T[][]>((sets, each) => sets.concat(sets.map((set) => set.concat([each]))), [[]])

/** Everything that a client could take of an offer. */
const choices = ({ containers, extras }: Offer): Choice[] =>
	subsets(containers.filter(({ mayLeaveOut }) => mayLeaveOut).map(({ id }) => id)).flatMap((leftOut) =>
		subsets(extras.map(({ key }) => key)).map((chosen) => ({ leftOut, extras: chosen })),
	)

const options = () =>
	kept().flatMap(({ offer, costing, rates }) =>
		offer.options.map((option) => {
			const inputs = found(costing.find(({ key }) => key === option.key))
			const job: Job = { ...inputs.job, rates }
			return { offer, option, job }
		}),
	)

describe('what was published gives the same cents for ever', () => {
	test('every option is the price list that its frozen inputs and rates make', () => {
		expect(kept()).toHaveLength(29)
		for (const { option, job } of options()) expect(price(job, wordsIn(job.currency)).list).toEqual(option.prices)
	})

	test('every choice of it comes to the same from the offer alone and from its inputs', () => {
		for (const { offer, option, job } of options()) {
			const { list } = price(job, wordsIn(job.currency))
			for (const choice of choices(offer)) expect(quote(option.prices, choice)).toEqual(quote(list, choice))
		}
	})

	// Judge: fraction.js, exact rationals (see tests/reference/quote-judge.test.ts).
	test('and to what a judge in exact fractions works out', () => {
		for (const { offer, option, job } of options())
			for (const choice of [everything, ...choices(offer).slice(-1)])
				expect(quote(option.prices, choice).totalCents).toBe(judge(job, choice).totalCents)
	})

	test('every yes bears the total of its own choice', () => {
		const approved = kept().filter(({ total }) => total !== null)
		expect(approved).toHaveLength(17)
		for (const { offer, option, places, extras, leftOut, total } of approved) {
			const taken = found(palettesOf(offer, { option, places: places ?? {} }))
			const out = offer.containers.filter(({ id }) => leftOut?.includes(id)).map(({ id }) => id)
			expect(quote(pricesOf(taken), { extras: extras ?? [], leftOut: out }).totalCents).toBe(total)
		}
	})
})

/** All that a price and an offer follow from is made another. */
async function changeEverything(): Promise<void> {
	const [designer, { clients, studio: house }] = [await of.as('designer'), of.cast()]
	for (const { material, trait, pack } of await listMaterials(designer)) {
		const sold = { supplier: 'A stranger', size: 3, priceCents: (pack?.priceCents ?? 0) + 77, freightPercent: 31 }
		const renamed = {
			...material,
			...hollyTraits,
			...trait,
			name: `Another ${material.name}`,
			isPoisonousToPets: !material.isPoisonousToPets,
		}
		must(material.name, await saveMaterial(designer, material.id, renamed, sold, of.stamp()))
	}
	const dearer = { ...defaultRates, billedCentsPerHour: 9100, crew: 3, minimumVisitCents: 90_000 }
	write((tx) => keepRates(tx, of.stamp(), designer, dearer))
	for (const key of keysOf(clients)) await moveAway(designer, clients[key].id)
	const settings = { name: 'Reed & Lamp', timeZone: house.timeZone, currency: 'USD', lengths: 'cm' } as const
	must('settings', await saveSettings(designer, settings, of.stamp()))
}

async function moveAway(designer: Viewer, id: ClientId): Promise<void> {
	const { client, places } = found(await clientPage(designer, id))
	const renamed = { ...client, name: `${client.name} and sons`, netDays: 15 } as const
	must(client.name, await saveClient(designer, client.id, renamed, of.stamp()))
	for (const { containers, colours: _, ...place } of places) {
		const moved = { name: 'Elsewhere', address: '9 Elsewhere Lane', taxMilliPercent: 9_125, driveMinutes: 55 }
		must(
			place.name,
			await savePlace(designer, { client: client.id, place: place.id }, { ...place, ...moved }, of.stamp()),
		)
		for (const card of containers) {
			const where = { client: client.id, place: place.id, container: card.id }
			const grown = { ...card, name: 'Another pot', heightCm: card.heightCm + 20 }
			must(card.name, await saveContainer(designer, where, grown, of.stamp()))
		}
	}
}

describe('what becomes of materials, rates, names and drafts afterwards', () => {
	const everyOffer = async () => {
		const [designer, { proposals, autumn }] = [await of.as('designer'), of.cast()]
		const ids = [...Object.values(proposals), ...Object.values(autumn)]
		const pages = await Promise.all(ids.map((id) => readOffer(designer, id, of.stamp())))
		// The measure beside a picture is in the studio's units of today; it is no part of what was offered.
		return pages.map((shown) => shown && { ...shown, lengths: null })
	}
	const desk = async () => {
		const { draft: written } = await draft('bakery')
		return priceDraft(await of.as('designer'), { proposal: idOf('bakery'), draft: written }, of.stamp())
	}

	test('changes no offer that is out, word by word and cent by cent', async () => {
		const [before, priced] = [await everyOffer(), await desk()]
		await changeEverything()
		expect(await everyOffer()).toEqual(before)
		// It does change what is still on the desk.
		expect(await desk()).not.toEqual(priced)
		for (const key of keysOf(of.cast().proposals))
			await redraft(key, () => emptyDraft({ from: null, to: null, answerBy: null }))
		expect(await everyOffer()).toEqual(before)
		expect(before.filter((each) => each?.offer !== undefined)).toHaveLength(28)
	})

	test('changes neither the total nor the margin of a yes', async () => {
		const { offer } = await page('bakery')
		const total = quote(found(offer?.options[0]).prices, everything).totalCents
		const ledger = () =>
			stranger(of.folder(), (sqlite) =>
				sqlite.prepare('SELECT value_cents, margin_tenths FROM proposal WHERE id = ?').get(idOf('bakery')),
			)
		const before = ledger()
		await changeEverything()
		const approval = {
			...(await answering('bakery')),
			option: 'a',
			places: {},
			extras: [],
			leftOut: [],
			purchaseOrder: '',
		}
		must('bakery', await approve(await of.as('bakeryApprover'), approval, of.stamp()))
		expect((await page('bakery')).answer?.totalCents).toBe(total)
		expect(ledger()).toEqual(before)
	})
})
