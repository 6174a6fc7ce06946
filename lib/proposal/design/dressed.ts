import type { PaletteColour } from '../../colour/palette/palette'
import { heldAnew } from '../../recipe/held-anew'
import { canBeLent, type Holding } from '../../recipe/material'
import type { RecipeLine } from '../../recipe/recipe'
import type { DesignMaterial } from '../../recipe/traits'
import type { MaterialId } from '../../units/id'

type Materials = ReadonlyMap<MaterialId, DesignMaterial>

/** What a palette is made of, its leading colour's first. */
const madeOf = (palette: readonly Pick<PaletteColour, 'materials'>[], materials: Materials): DesignMaterial[] =>
	[...new Set(palette.flatMap((colour) => colour.materials))].flatMap((id) => materials.get(id) ?? [])

/** What comes back to the studio is lent where the line was lent, and sold otherwise. */
const holdingOf = (material: DesignMaterial, before: Holding): Holding =>
	before === 'lent' && canBeLent(material.kind) ? 'lent' : 'sold'

/** Of the same role and handled alike; of the same form rather than of another. */
function takes(line: RecipeLine, from: readonly DesignMaterial[], materials: Materials): DesignMaterial | undefined {
	const own = materials.get(line.material)
	const alike = from.filter(
		({ role, kind, unit }) =>
			role === line.role && (own === undefined || (unit === own.unit && (kind === 'live') === (own.kind === 'live'))),
	)
	return alike.find(({ id }) => id === line.material) ?? alike.find(({ form }) => form === own?.form) ?? alike[0]
}

/**
 * A recipe in the colours of a palette: each thriller and accent becomes a material of the palette that does the same
 * work, each material once; lights stay, and so does what the palette has nothing for. What is held follows.
 */
export function dressed(
	recipe: readonly RecipeLine[],
	palette: readonly Pick<PaletteColour, 'materials'>[],
	materials: Materials,
): RecipeLine[] {
	let free = madeOf(palette, materials).filter(({ kind }) => kind !== 'light')
	const others = new Map<MaterialId, MaterialId>()
	const lines = recipe.map((line) => {
		const isColoured = line.role === 'thriller' || line.role === 'accent'
		if (!isColoured || materials.get(line.material)?.kind === 'light') return line
		const taken = takes(line, free, materials)
		if (taken === undefined) return line
		free = free.filter(({ id }) => id !== taken.id)
		others.set(line.material, taken.id)
		return { ...line, material: taken.id, holding: holdingOf(taken, line.holding) }
	})
	return lines.map((line) => ({ ...line, grows: heldAnew(line.grows, others) }))
}
