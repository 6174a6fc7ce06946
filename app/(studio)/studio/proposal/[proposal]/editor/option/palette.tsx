'use client'
import { Box, Does } from '../box'
import { boxAt, type Known, type Option, type Part, replaced } from '../known'
import { WithPutBack } from '../removal/put-back'
import { useRemoval } from '../removal/use-removal'

type Palette = Option['palette']
type Props = Part<Palette> & { readonly known: Known; readonly option: string }

/** Named colours, by eye or taken up from the building. */
export function PaletteFields({ value, onChange, errors, path, known, option }: Props) {
	const { takeOut, goTo } = useRemoval()
	const add = (name: string, hex: string, echoes: string) => {
		onChange([...value, { name, hex, echoes }])
		goTo(`${path}.${value.length}.hex`)
	}
	return (
		<div className="mt-2">
			<ul className="grid gap-x-4 sm:grid-cols-2">
				<WithPutBack list={`options.${option}.palette`} as="li">
					{Object.entries(value).map(([place, colour]) => {
						const index = Number(place)
						const change = (next: Partial<Palette[number]>) => onChange(replaced(value, index, { ...colour, ...next }))
						const at = `${path}.${index}`
						return (
							<li key={place} className="grid grid-cols-[2.75rem_1fr_1.3fr_auto] items-start gap-x-2 py-1">
								<Box
									hidden
									type="color"
									label={`Colour ${index + 1}`}
									className="p-0.5"
									value={colour.hex}
									onChange={(hex) => change({ hex })}
									{...boxAt(errors, `${at}.hex`)}
								/>
								<Box
									hidden
									label={`Name of colour ${index + 1}`}
									value={colour.name}
									onChange={(name) => change({ name })}
									{...boxAt(errors, `${at}.name`)}
								/>
								<Box
									hidden
									label={`What colour ${index + 1} echoes`}
									value={colour.echoes}
									onChange={(echoes) => change({ echoes })}
									{...boxAt(errors, `${at}.echoes`)}
								/>
								<Does onClick={() => takeOut({ is: 'colour', option, at: index })}>
									Remove<span className="sr-only"> colour {index + 1}</span>
								</Does>
							</li>
						)
					})}
				</WithPutBack>
			</ul>
			<p className="flex flex-wrap gap-x-4">
				<Does at={path} onClick={() => add('', '#7a8b6f', '')}>
					Add a colour
				</Does>
				{known.colours.map(({ name, hex }) => (
					<Does key={`${name} ${hex}`} onClick={() => add(name, hex, `your ${name.toLowerCase()}`)}>
						<svg width="12" height="12" aria-hidden="true" className="me-1 inline">
							<rect width="12" height="12" fill={hex} />
						</svg>
						{name}
					</Does>
				))}
			</p>
		</div>
	)
}
