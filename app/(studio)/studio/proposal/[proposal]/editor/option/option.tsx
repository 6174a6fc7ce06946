'use client'
import type { DeskOption } from '@/lib/proposal/desk/desk'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import { swapped } from '@/lib/proposal/desk/swapped'
import { Box, Does, Pick } from '../box'
import type { Known, Line, Option, Part } from '../known'
import type { FindOthers } from './another'
import { Findings } from './findings'
import { Lines } from './lines'
import { PaletteFields } from './palette'
import { Pictured } from './pictured'
import { Seen } from './seen'

type Props = Part<Option> & {
	readonly known: Known
	readonly number: number
	readonly containers: readonly { readonly id: string; readonly name: string }[]
	readonly hasSupplement: boolean
	readonly onRemove: () => void
	readonly onCopy: () => void
	/** As the server sees it; undefined until it has been asked. */
	readonly desk: DeskOption | undefined
	/** Grows a recipe of the library into every container, or, with none named, what is there anew. */
	readonly onGrow: (recipe: string | null) => void
	readonly findOthers: FindOthers
	readonly onNote: (container: string, check: string, note: string | null) => void
}

const linesOf = (option: Option, container: string): readonly Line[] =>
	option.pots.find((pot) => pot.container === container)?.lines ?? []

/** Puts `lines` into one container, leaving the others. */
function filled(option: Option, container: string, lines: readonly Line[]): Option {
	const others = option.pots.filter((pot) => pot.container !== container)
	return { ...option, pots: [...others, { container, lines: [...lines] }] }
}

/** One material replaced by another in the containers named. */
const swappedIn = (option: Option, where: readonly string[], from: string, to: StandIn): Option => ({
	...option,
	pots: option.pots.map((pot) =>
		where.includes(pot.container) ? { ...pot, lines: swapped(pot.lines, from, to) } : pot,
	),
})

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
	desk,
	onGrow,
	findOthers,
	onNote,
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
			{desk !== undefined && desk.words.length > 0 && <p className="mt-1 text-sm text-soft">{desk.words.join(' ')}</p>}
			{desk !== undefined && <Seen seen={desk.seen} of={called} />}
			<Pictured pictures={desk?.pictures ?? []} />
			<Recipes recipes={known.recipes} of={called} canGrow={hasGrown(value)} onGrow={onGrow} />
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
						isOneOfMany={others.length > 0}
						findOthers={(material) => findOthers(material, id)}
						onSwap={(from, to, where) =>
							onChange(swappedIn(value, where === 'everywhere' ? containers.map((each) => each.id) : [id], from, to))
						}
					/>
					{desk?.pots
						.filter(({ container }) => container === id)
						.map((state) => (
							<Findings
								key={state.container}
								state={state}
								of={`${called}, ${name}`}
								onNote={(check, note) => onNote(id, check, note)}
							/>
						))}
				</div>
			))}
		</fieldset>
	)
}

const hasGrown = ({ pots }: Option) => pots.some(({ lines }) => lines.some(({ grows }) => grows !== null))

type RecipesProps = {
	readonly recipes: Known['recipes']
	readonly of: string
	readonly canGrow: boolean
	readonly onGrow: (recipe: string | null) => void
}

/** Choosing a recipe puts it into every container, grown to each; counts that are kept stay. */
function Recipes({ recipes, of, canGrow, onGrow }: RecipesProps) {
	return (
		<div className="mt-3 flex flex-wrap items-end gap-x-4">
			<Pick label={`Put a recipe into ${of}`} value="" onChange={(recipe) => recipe !== '' && onGrow(recipe)}>
				<option value="">Choose a recipe…</option>
				{recipes.map(({ id, name }) => (
					<option key={id} value={id}>
						{name}
					</option>
				))}
			</Pick>
			{canGrow && (
				<Does onClick={() => onGrow(null)}>
					Grow it anew<span className="sr-only">, {of}</span>
				</Does>
			)}
		</div>
	)
}
