import type { FieldErrors } from '@/lib/forms/read'

type Props = {
	readonly names: readonly string[]
	readonly hexes: readonly string[]
	readonly rows: number
	/** What a row shows that nobody has filled. */
	readonly blank: string
	readonly errors: FieldErrors
}

/** The colours of a palette, each with its name; a row without a name is left out. */
export function ColourRows({ names, hexes, rows, blank, errors }: Props) {
	const all = Array.from({ length: Math.max(rows, names.length) }, (_, index) => ({
		place: index + 1,
		name: names[index] ?? '',
		hex: hexes[index] ?? blank,
		error: errors[`colour.${index}`] ?? errors[`hex.${index}`],
	}))
	return (
		<fieldset className="mt-5">
			<legend className="font-semibold">Colours, what leads first</legend>
			<p className="text-sm text-soft">A row without a name is left out.</p>
			{(errors.colour ?? errors.hex) && <p className="mt-1 font-semibold text-warn">{errors.colour ?? errors.hex}</p>}
			<ul className="mt-1.5 grid gap-x-8 gap-y-1 sm:grid-cols-2">
				{all.map(({ place, name, hex, error }) => (
					<li key={place}>
						<div className="grid grid-cols-[3.5rem_1fr] gap-x-2">
							<input
								type="color"
								name="hex"
								id={`hex.${place - 1}`}
								aria-label={`Colour ${place}`}
								className="box p-0.5"
								defaultValue={hex}
							/>
							<input
								name="colour"
								id={`colour.${place - 1}`}
								aria-label={`Name of colour ${place}`}
								autoComplete="off"
								className="box"
								defaultValue={name}
								aria-invalid={error ? true : undefined}
							/>
						</div>
						{error && <p className="text-sm font-semibold text-warn">{error}</p>}
					</li>
				))}
			</ul>
		</fieldset>
	)
}
