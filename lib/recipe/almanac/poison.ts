import type { Hazard, Kind } from '../material'

type Kin = { readonly words: RegExp; readonly to: readonly Hazard[] }

const both: readonly Hazard[] = ['poisonous to people', 'poisonous to pets']
const people: readonly Hazard[] = ['poisonous to people']
const pets: readonly Hazard[] = ['poisonous to pets']

const kin = (words: string, to: readonly Hazard[]): Kin => ({ words: new RegExp(`\\b(?:${words})\\b`, 'i'), to })

/**
 * Plants of the trade that published lists call poisonous, mildly or worse, by their common and Latin names. People:
 * University of Georgia Extension, "Poisonous Plants in the Landscape" (as told in its release of 30 November 2009),
 * and the Massachusetts Poison Control System's list of holiday plants; pets: the ASPCA's list, as pages quote it.
 * Nandina, euphorbia and ornamental pepper: gardeners' lists of master gardeners and nurseries.
 */
const listed: readonly Kin[] = [
	kin('yew|taxus', both),
	kin('box|boxwood|buxus', both),
	kin('holly|hollies|winterberry|ilex', both),
	kin('mistletoe|viscum|phoradendron', both),
	kin('ivy|hedera', both),
	kin('hellebores?|helleborus|lenten rose|christmas rose', both),
	kin('cyclamens?', both),
	kin('foxgloves?|digitalis', both),
	kin('euphorbias?|spurge|poinsettias?', both),
	kin('amaryllis|hippeastrum', both),
	kin('daffodils?|narcissus|narcissi|paperwhites?|jonquils?', both),
	kin('tulips?|tulipa|hyacinths?|hyacinthus', both),
	kin('azaleas?|rhododendrons?', both),
	kin('lantanas?|oleanders?|jerusalem cherry', both),
	kin('lily of the valley|convallaria|calla|calla lily|calla lilies|caladiums?|elephant ears?', both),
	kin('sago palm|cycas|delphiniums?|larkspur', both),
	kin('ornamental peppers?|christmas peppers?', people),
	kin('juniper|junipers|juniperus', people),
	kin('nandina|heavenly bamboo', pets),
	kin('lily|lilies|lilium|daylily|daylilies|hemerocallis', pets),
	kin('chrysanthemums?|mums?', pets),
	kin('begonias?|hydrangeas?|clivias?|kalanchoes?|dahlias?|coleus', pets),
	kin('morning glory|sweet potato vines?|ipomoea', pets),
	kin('eucalyptus', pets),
	kin('geraniums?|pelargoniums?', pets),
]

const grown: ReadonlySet<Kind> = new Set(['fresh', 'live'])

/** Hazards that published lists give a plant of this name. What is not a plant is not poisonous: faux berries are small parts. */
export function listedHazards(name: string, kind: Kind): Hazard[] {
	if (!grown.has(kind)) return []
	return [...new Set(listed.filter(({ words }) => words.test(name)).flatMap(({ to }) => to))]
}
