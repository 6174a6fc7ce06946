import { alike } from '../../../colour/palette/alike'
import { type Finding, finding } from '../../../recipe/check/finding'
import type { ContainerId } from '../../../units/id'
import type { DraftOption } from '../../draft'
import type { Card } from '../../facts'
import type { Around, Neighbour, OtherPalette } from './around'

type Coloured = Pick<DraftOption, 'palette'>

const hexesOf = ({ palette }: Coloured) => palette.map(({ hex }) => hex)
const called = ({ name }: OtherPalette) => (name === '' ? '' : `, “${name}”`)

/** The palette that this client chose a year ago. */
function lastYears(option: Coloured, { lastYear }: Around): Finding[] {
	if (lastYear === null || !alike(hexesOf(option), lastYear.hexes)) return []
	const says = `These are nearly the colours that they chose last year${called(lastYear)}: it would look as if nothing had changed.`
	const mend = 'Turn one of the leading colours, or say in the letter why it stays.'
	return [finding('palette/last year', 'caution', says, mend)]
}

function neighbours(option: Coloured, { client, name, palettes }: Neighbour): Finding[] {
	const same = palettes.find(({ hexes }) => alike(hexesOf(option), hexes))
	if (same === undefined) return []
	const says = `${name}, in the same street, has nearly these colours this season${called(same)}.`
	const mend = 'Give one of the two another palette, or turn a leading colour.'
	return [finding(`palette/neighbour/${client}`, 'caution', says, mend)]
}

/**
 * A palette that was there before: this client's of a year ago, said at the first of the containers, and that of another
 * client in the same street, said at the first that stands there.
 */
export function repeated(
	option: Coloured,
	cards: readonly Pick<Card, 'id' | 'place'>[],
	around: Around,
): ReadonlyMap<ContainerId, readonly Finding[]> {
	return new Map(
		cards.map(({ id, place }, index) => {
			const isFirstThere = cards.findIndex((other) => other.place === place) === index
			const near = isFirstThere ? around.neighbours.filter((each) => each.place === place) : []
			const before = index === 0 ? lastYears(option, around) : []
			return [id, [...before, ...near.flatMap((each) => neighbours(option, each))]]
		}),
	)
}
