import { capital } from '../../format/words'
import type { Planned } from '../planned'
import { named } from '../planned'
import { type Finding, finding } from './finding'
import type { Check, Setting } from './setting'

type Question = {
	readonly about: string
	/** Lines of which it should be known, and is not. */
	readonly lacks: (line: Planned, setting: Setting) => boolean
	/** After the names: what their cards lack, and so what cannot be told. */
	readonly says: string
	readonly mend: string
}

const questions: readonly Question[] = [
	{
		about: 'length',
		lacks: ({ role, material }) => role === 'thriller' && material.lengthCm === null,
		says: 'no length on the card, so how high it stands cannot be told.',
		mend: 'Measure one and write its length on its card.',
	},
	{
		about: 'weight',
		lacks: ({ material: { piece, unit, kgEach } }) => piece === 'green' && unit !== 'kg' && kgEach === null,
		says: 'no weight on the card, so how full the pot is cannot be told.',
		mend: 'Weigh ten of them and write a tenth of it on the card.',
	},
	{
		about: 'spacing',
		lacks: ({ material: { kind, spacingCm } }) => kind === 'live' && spacingCm === null,
		says: 'no spacing on the card, so how many fit cannot be told.',
		mend: 'Write the spacing of its label on its card.',
	},
	{
		about: 'root ball',
		lacks: ({ material: { kind, rootBallLitres } }) => kind === 'live' && rootBallLitres === null,
		says: 'no root ball on the card, so whether it fits the soil cannot be told.',
		mend: 'Write the litres of its pot on its card.',
	},
	{
		about: 'zone',
		lacks: ({ material: { kind, zone } }, { quarter }) => quarter === 'winter' && kind === 'live' && zone === null,
		says: 'no hardiness zone on the card, so whether it lives through the winter cannot be told.',
		mend: 'Write the zone of its label on its card.',
	},
	{
		about: 'watts',
		lacks: ({ material: { kind, watts } }) => kind === 'light' && watts === null,
		says: 'no watts on the card, so what the circuit carries cannot be told.',
		mend: 'Write the watts of its label on its card.',
	},
]

function place(lines: readonly Planned[], { quarter, zone }: Setting): Finding[] {
	const live = lines.filter(({ material }) => material.kind === 'live')
	if (quarter !== 'winter' || zone !== null || live.length === 0) return []
	const says = `The place has no hardiness zone, so whether ${named(live)} can live through its winter cannot be told.`
	return [finding('unknown/place', 'caution', says, 'Write the USDA zone on the card of the place.')]
}

/** What a card does not say, and what therefore no check can tell. */
export const unknown: Check = (lines, setting) => [
	...questions.flatMap(({ about, lacks, says, mend }) => {
		const found = lines.filter((line) => lacks(line, setting))
		return found.length === 0 ? [] : [finding(`unknown/${about}`, 'caution', `${capital(named(found))}: ${says}`, mend)]
	}),
	...place(lines, setting),
]
