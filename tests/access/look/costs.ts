import { z } from 'zod'
import { moneyFormat } from '@/lib/format/money'
import { jobInputsSchema } from '@/lib/pricing/job-schema'
import { price } from '@/lib/pricing/price'
import { everything } from '@/lib/pricing/quote/choice'
import { costing } from '@/lib/pricing/quote/costing'
import { ratesSchema } from '@/lib/pricing/rates'
import { offerSchema } from '@/lib/proposal/offer/offer'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { record } from '../site/snapshot'

const textAt = z.array(z.string())
const inputs = z.array(z.strictObject({ key: z.string(), job: jobInputsSchema }))
const money = moneyFormat('USD')

const column = (folder: string, sql: string) => record(folder, (db) => textAt.parse(db.prepare(sql).pluck().all()))

type Costs = { readonly cents: readonly number[]; readonly margin: number | null }

/** What every published revision cost, part by part and in sum, computed anew from what was sealed with it. */
function costsOfRevisions(folder: string): Costs[] {
	const [newest = ''] = column(folder, 'SELECT document FROM rates ORDER BY version DESC')
	const rates = ratesSchema.parse(JSON.parse(newest))
	const sealed = column(folder, 'SELECT body FROM sealed_text WHERE hash IN (SELECT costing_hash FROM revision)')
	return sealed
		.flatMap((body) => inputs.parse(JSON.parse(body)))
		.map(({ job }) => {
			const { list, costs } = price({ ...job, rates }, { money })
			const { materialCents, labourCents, costCents, marginPercent, parts } = costing(list, costs, everything)
			const ofParts = [...parts, ...costs.parts].flatMap((part) => [
				part.costCents,
				part.labourCostCents,
				part.otherCostCents,
				...part.lines.map((line) => line.costCents),
			])
			return { cents: [materialCents, labourCents, costCents, ...ofParts], margin: marginPercent }
		})
}

const packPrices = (folder: string): number[] =>
	record(folder, (db) => z.array(z.int()).parse(db.prepare('SELECT price_cents FROM pack').pluck().all()))

/** Every choice that a client can make, near enough: all, none, and each extra and each left-out container alone. */
function choicesOf({ options, extras, containers }: z.infer<typeof offerSchema>) {
	const keys = extras.map(({ key }) => key)
	const out = containers.filter(({ mayLeaveOut }) => mayLeaveOut).map(({ id }) => id)
	const added = [[], keys, ...keys.map((key) => [key])]
	const left = [[], ...out.map((id) => [id])]
	return options.flatMap(({ key }) =>
		added.flatMap((some) => left.map((leftOut) => ({ option: key, places: {}, extras: some, leftOut }))),
	)
}

/** Each place in each other palette by itself. */
const mixedOf = ({ options, places }: z.infer<typeof offerSchema>) =>
	options.flatMap(({ key: option }) =>
		places.flatMap(({ id }) => options.map(({ key }) => ({ option, places: { [id]: key }, extras: [], leftOut: [] }))),
	)

const amount = /(\d[\d,]*)\.(\d\d)(?!\d)/g

/** Every amount that a client may read, in cents. */
function clientAmounts(folder: string): Set<number> {
	const sealed = column(folder, 'SELECT body FROM sealed_text WHERE hash IN (SELECT offer_hash FROM revision)')
	const views = sealed.flatMap((body) => {
		const offer = offerSchema.parse(JSON.parse(body))
		return [{ option: null, places: {}, extras: [], leftOut: [] }, ...choicesOf(offer), ...mixedOf(offer)].map(
			(picked) => {
				const { offer: _, ...view } = offerView(offer, undefined, picked)
				return JSON.stringify(view)
			},
		)
	})
	const found = views.flatMap((view) => [...view.matchAll(amount)])
	return new Set(found.map(([, whole = '', part = '']) => Number(`${whole.replaceAll(',', '')}${part}`)))
}

export type Secrets = { readonly cents: ReadonlySet<number>; readonly margins: ReadonlySet<string> }

/** Costs that no client has a reason to read: four digits at least, and the same as no amount of theirs; margins as written. */
export function secretsOf(folder: string): Secrets {
	const open = clientAmounts(folder)
	const costs = costsOfRevisions(folder)
	const all = [...packPrices(folder), ...costs.flatMap(({ cents }) => cents)]
	return {
		cents: new Set(all.filter((cents) => cents >= 1000 && !open.has(cents))),
		margins: new Set(
			costs.flatMap(({ margin }) => (margin === null || Number.isInteger(margin) ? [] : String(margin))),
		),
	}
}

const isYear = (whole: number) => whole >= 2020 && whole <= 2040

/** The secret amounts in a text, written as 12.34, 12,34, 1,234.56, 1.234,56 or 1234, and margins such as 52.3 %. */
export function secretsIn(text: string, { cents, margins }: Secrets): string[] {
	const parted = [...text.matchAll(/(?<![\d.,])(\d[\d,.]*)[.,](\d\d)(?!\d)/g)].filter(([, whole = '', part = '']) =>
		cents.has(Number(`${whole.replace(/[.,]/g, '')}${part}`)),
	)
	const wholes = [...text.matchAll(/(?<![\w.,#%/-])\d{4,7}(?![\w%:/-]|[.,]\d)/g)].filter(
		([found]) => cents.has(Number(found)) && !isYear(Number(found)),
	)
	const shares = [...text.matchAll(/(?<![\d.,])(\d{1,2}\.\d)(?=\s?%)/g)].filter(([found]) => margins.has(found))
	return [...parted, ...wholes, ...shares].map(([found]) => found)
}
