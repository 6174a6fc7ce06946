import type { Typed } from '@/lib/forms/read'

type Material = Readonly<Record<'name' | 'kind' | 'piece' | 'role' | 'unit' | 'hex', string>> &
	Readonly<Record<'isPoisonousToPeople' | 'isPoisonousToPets' | 'hasSmallParts', boolean>> & {
		readonly piecesPerUnit: number
	}
type Saved = {
	readonly material: Material
	readonly pack: Readonly<Record<'size' | 'priceCents' | 'freightPercent', number>> | null
	readonly supplier: string | null
}

const on = (is: boolean) => (is ? 'on' : '')

/** A kept material as its card shows it. */
export function savedFields(row: Saved | undefined): Typed {
	if (row === undefined) return { piecesPerUnit: '1', hex: '#4f6b4a', freightPercent: '0' }
	const { material, pack, supplier } = row
	const { name, kind, piece, role, unit, piecesPerUnit, hex } = material
	const hazards = {
		isPoisonousToPeople: on(material.isPoisonousToPeople),
		isPoisonousToPets: on(material.isPoisonousToPets),
		hasSmallParts: on(material.hasSmallParts),
	}
	const sold =
		pack === null
			? {}
			: {
					size: String(pack.size),
					price: (pack.priceCents / 100).toFixed(2),
					freightPercent: String(pack.freightPercent),
				}
	return {
		name,
		kind,
		piece,
		role,
		unit,
		piecesPerUnit: String(piecesPerUnit),
		hex,
		...hazards,
		...sold,
		supplier: supplier ?? '',
	}
}
