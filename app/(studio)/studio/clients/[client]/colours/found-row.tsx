'use client'
import { blended } from '@/lib/colour/site/blended'
import type { Spot } from '@/lib/colour/site/photo'
import { spotWords } from '@/lib/colour/site/spot-words'
import type { Hex } from '@/lib/units/hex'

export type Found = { readonly name: string; readonly hex: Hex; readonly share: number; readonly spot: Spot }
/** A colour that was found; its key stays while others are made one with it. */
export type FoundRow = Found & { readonly key: string }

/** `other` made one with `one`, which keeps its name and its spot. */
export const madeOne = (rows: readonly FoundRow[], one: FoundRow, other: FoundRow): FoundRow[] =>
	rows
		.filter(({ key }) => key !== other.key)
		.map((row) => (row.key === one.key ? { ...row, hex: blended(one, other), share: one.share + other.share } : row))

type Props = {
	readonly row: FoundRow
	readonly number: number
	readonly others: readonly FoundRow[]
	readonly onDrop: () => void
	readonly onTakeIn: (other: FoundRow) => void
}

/** One colour of the photo before it is kept: named, dropped, or made one with another. */
export function FoundColour({ row: { name, hex, spot }, number, others, onDrop, onTakeIn }: Props) {
	return (
		<li className="flex flex-wrap items-end gap-x-3 gap-y-1 border-t border-line py-1.5">
			<svg width="44" height="44" aria-hidden="true">
				<rect width="44" height="44" fill={hex} />
			</svg>
			<input type="hidden" name="hex" value={hex} />
			<input type="hidden" name="spotX" value={spot.x.toFixed(4)} />
			<input type="hidden" name="spotY" value={spot.y.toFixed(4)} />
			<label className="grow">
				<span className="block text-sm text-soft">
					<span className="sr-only">Name of colour</span> {number}, {spotWords(spot)}
				</span>
				<input name="name" className="box small" autoComplete="off" defaultValue={name} maxLength={40} />
			</label>
			<label>
				<span className="sr-only">Where colour {number} is seen</span>
				<select name="side" className="box small">
					<option>outside</option>
					<option>inside</option>
				</select>
			</label>
			{others.length > 0 && (
				<label>
					<span className="sr-only">Make colour {number} one with</span>
					<select
						className="box small"
						value=""
						onChange={(event) => {
							const other = others.find(({ key }) => key === event.target.value)
							if (other !== undefined) onTakeIn(other)
						}}
					>
						<option value="">one with…</option>
						{others.map((each) => (
							<option key={each.key} value={each.key}>
								{each.name}, {spotWords(each.spot)}
							</option>
						))}
					</select>
				</label>
			)}
			<button type="button" className="does" onClick={onDrop}>
				Drop<span className="sr-only"> {name}</span>
			</button>
		</li>
	)
}
