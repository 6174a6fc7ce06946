import { list } from '@/lib/format/words'
import { offerView } from '@/lib/proposal/offer/offer-view'
import { receipt } from '@/lib/proposal/offer/receipt'
import type { Drawing } from '../drawing'
import type { Pictured, ProposalPaper } from './input'

type Seen = ReturnType<typeof offerView>
const taken = ({ options }: Seen) => options.filter(({ isOnWall, at }) => isOnWall || at.length > 0)

const paletteViews = (view: Seen, { say }: Drawing) =>
	taken(view).map(({ key, name, palette, at }) => ({
		...{ key, name: say(name), at: at.length === 0 ? null : say(`At ${list([...at])}`) },
		chips: palette.map((chip, place) => ({
			...{ key: `${place}`, hex: chip.hex, name: say(chip.name), echoes: say(chip.echoes) },
		})),
	}))

const potViews = ({ potGroups }: Seen, { say }: Drawing) =>
	potGroups.map(({ names, words, layers }) => ({
		...{ key: names.join(), names: say(names.join(' · ')), words: say(words.join('; ')) },
		layers: layers.map(({ role, place, words: holds }) => ({ role, place, words: say(holds) })),
	}))

function priceView({ price }: Seen, { say }: Drawing) {
	if (price === undefined) throw new Error('priceView: what was approved has no price')
	return {
		rows: [...price.rows, ...price.taxes].map(({ key, label, amount }) => ({ key, words: say(label), amount })),
		total: price.total,
		notes: [`To be paid: ${price.due}.`, ...price.notes].map(say),
	}
}

/**
 * Every word and figure of the file, in letters that can be drawn.
 * @throws when the palette that was approved is not one of the offer's
 */
export function proposalView(input: ProposalPaper, pictures: readonly Pictured[], drawing: Drawing) {
	const { offer, approval, hash } = input
	const { say } = drawing
	const record = receipt(offer, approval)
	if (record === undefined) throw new Error(`proposalView: ${approval.option} was not offered`)
	const seen = offerView(offer, undefined, approval)
	return {
		...{ title: say(offer.title), studio: say(offer.studio), signedBy: say(`${offer.signedBy}, ${offer.studio}`) },
		foot: `Approved design ${approval.reference}, revision ${offer.number}, hash ${hash.slice(0, 8)} ${hash.slice(8, 16)} …`,
		facts: record.rows.map(({ label, value }) => ({ label, value: say(value) })),
		letter: say(offer.letter)
			.split(/\n+/)
			.map((words, place) => ({ key: `${place}`, words })),
		pictures: pictures.map(({ caption, jpeg }) => ({ caption: say(caption), jpeg })),
		palettes: paletteViews(seen, drawing),
		pots: potViews(seen, drawing),
		extras: seen.extras
			.filter(({ isAdded }) => isAdded)
			.map(({ key, name, words }) => ({ key, name: say(name), words: say(words) })),
		price: priceView(seen, drawing),
		cautions: seen.cautions.map(say),
	}
}
export type ProposalView = ReturnType<typeof proposalView>
