'use client'
import { Box, Does } from './box'
import type { Known, Line, Option, Part } from './known'
import { Lines } from './lines'
import { PaletteFields } from './palette'

type Props = Part<Option> & {
	readonly known: Known
	readonly number: number
	readonly containers: readonly { readonly id: string; readonly name: string }[]
	readonly hasSupplement: boolean
	readonly onRemove: () => void
	readonly onCopy: () => void
}

const linesOf = (option: Option, container: string): readonly Line[] =>
	option.pots.find((pot) => pot.container === container)?.lines ?? []

/** Puts `lines` into one container, leaving the others. */
function filled(option: Option, container: string, lines: readonly Line[]): Option {
	const others = option.pots.filter((pot) => pot.container !== container)
	return { ...option, pots: [...others, { container, lines: [...lines] }] }
}

/** One palette with what it puts into each container. */
export function OptionFields({
	value,
	onChange,
	errors,
	path,
	known,
	number,
	containers,
	hasSupplement,
	onRemove,
	onCopy,
}: Props) {
	const called = value.name || `palette ${number}`
	const [first, ...others] = containers
	const spread = () => {
		if (first === undefined) return
		const lines = linesOf(value, first.id)
		onChange(others.reduce((option, { id }) => filled(option, id, lines), value))
	}
	const at = (container: string) => `${path}.pots.${value.pots.findIndex((pot) => pot.container === container)}.lines`
	return (
		<fieldset className="mt-8 border-t-2 border-ink pt-3">
			<legend className="sr-only">Palette {number}</legend>
			<div className="flex flex-wrap items-end gap-x-4">
				<div className="grow">
					<Box
						label={`Palette ${number}, its name`}
						value={value.name}
						onChange={(name) => onChange({ ...value, name })}
						error={errors[`${path}.name`]}
					/>
				</div>
				{hasSupplement && (
					<Box
						label="Supplement"
						inputMode="decimal"
						className="w-24 text-end"
						value={value.supplementCents}
						onChange={(supplementCents) => onChange({ ...value, supplementCents })}
						error={errors[`${path}.supplementCents`]}
					/>
				)}
				<Does onClick={onCopy}>Copy it</Does>
				<Does onClick={onRemove}>
					Remove<span className="sr-only"> {called}</span>
				</Does>
			</div>
			<PaletteFields
				value={value.palette}
				onChange={(palette) => onChange({ ...value, palette })}
				errors={errors}
				path={`${path}.palette`}
				known={known}
			/>
			{containers.map(({ id, name }, index) => (
				<div key={id} className="mt-4">
					<div className="flex flex-wrap items-baseline justify-between gap-x-4">
						<h3 className="font-semibold">{name}</h3>
						{index === 0 && others.length > 0 && <Does onClick={spread}>Put the same into the others</Does>}
					</div>
					<Lines
						value={linesOf(value, id)}
						onChange={(lines) => onChange(filled(value, id, lines))}
						errors={errors}
						path={at(id)}
						known={known}
						of={`${called}, ${name}`}
					/>
				</div>
			))}
		</fieldset>
	)
}
