import type { Stamp } from '@/db/stamp'
import { changeCollection } from '@/db/studio/collection/change'
import type { Change } from '@/lib/season/collection/change'
import { hex } from '@/lib/units/hex'
import { winterCollection } from '../cast/catalogue/collection'
import { must } from './must'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

/** What the designer does one after the other until the winter's collection stands. */
function changesFor({ recipes, materials }: Stage): Change[] {
	const { title, letter, designs, extras } = winterCollection
	return [
		{ is: 'words', title, letter },
		...designs.map(({ name, palette, pot, box }): Change => {
			const chips = palette.map(([called, colour]) => ({ name: called, hex: hex(colour) }))
			const by = { pot: recipes.of(pot), box: box === null ? null : recipes.of(box), bowl: null }
			return { is: 'design', design: { key: null, name, palette: chips, recipes: by } }
		}),
		...extras.map(({ lines, ...extra }): Change => {
			const made = lines.map(([material, role, holding, value]) => ({
				...{ material: materials.of(material), role, holding },
				count: { way: 'typed' as const, value },
			}))
			return { is: 'extra', extra: { key: null, ...extra, lines: made } }
		}),
	]
}

async function keepCollection(stage: Stage, stamp: Stamp): Promise<void> {
	const [designer, season] = [await stage.designer(), stage.seasons.of('winter')]
	for (const [version, change] of changesFor(stage).entries())
		must(change.is, await changeCollection(designer, { season, version, change }, stamp))
}

/** Made the day after the winter was planned. */
export const collecting = (stage: Stage): Act[] => [
	{ at: momentOn(stage.today, -33, '18:20'), run: (stamp) => keepCollection(stage, stamp) },
]
