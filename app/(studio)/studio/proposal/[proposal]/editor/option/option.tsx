'use client'
import { inPot } from '@/lib/proposal/desk/removed/lines-of'
import type { Pots } from '@/lib/proposal/desk/removed/removed'
import { Box, Does } from '../box'
import { boxAt, type Option } from '../known'
import { useRemoval } from '../removal/use-removal'
import { PaletteFields } from './palette'
import { Pictured } from './pictured'
import { type OfPots, Pot } from './pot'
import { Recipes } from './recipes'
import { Seen } from './seen'

type Props = Omit<OfPots, 'called' | 'onSpread'> & {
	readonly number: number
	readonly hasSupplement: boolean
	/** Puts other things into its containers; what was there can be put back. */
	readonly onReplace: (pots: Pots) => void
	readonly onCopy: () => void
	readonly onGrow: (recipe: string | null) => void
}

/** What is in the first of the containers, in the others as well. */
function spread(option: Option, [first, ...others]: OfPots['containers']): Pots {
	const lines = option.pots.find(({ container }) => container === first?.id)?.lines ?? []
	return others.reduce((all, { id }) => inPot(all, id, () => [...lines]), option).pots
}

/** One palette with what it puts into each container. */
export function OptionFields({ number, hasSupplement, onReplace, onCopy, onGrow, ...of }: Props) {
	const { value, onChange, errors, path, known, containers, desk } = of
	const { takeOut } = useRemoval()
	const called = value.name || `palette ${number}`
	return (
		<fieldset className="mt-8 border-t-2 border-ink pt-3">
			<legend className="sr-only">Palette {number}</legend>
			<div className="flex flex-wrap items-end gap-x-4">
				<div className="grow">
					<Box
						label={`Palette ${number}, its name`}
						value={value.name}
						onChange={(name) => onChange({ ...value, name })}
						{...boxAt(errors, `${path}.name`)}
					/>
				</div>
				{hasSupplement && (
					<Box
						label="Supplement"
						inputMode="decimal"
						className="w-24 text-end"
						value={value.supplementCents}
						onChange={(supplementCents) => onChange({ ...value, supplementCents })}
						{...boxAt(errors, `${path}.supplementCents`)}
					/>
				)}
				<Does onClick={onCopy}>
					Copy it<span className="sr-only">: {called}</span>
				</Does>
				<Does onClick={() => takeOut({ is: 'palette', option: value.key })}>
					Remove<span className="sr-only"> {called}</span>
				</Does>
			</div>
			<PaletteFields
				value={value.palette}
				onChange={(palette) => onChange({ ...value, palette })}
				errors={errors}
				path={`${path}.palette`}
				known={known}
				option={value.key}
			/>
			{desk !== undefined && desk.words.length > 0 && <p className="mt-1 text-sm text-soft">{desk.words.join(' ')}</p>}
			{desk !== undefined && <Seen seen={desk.seen} of={called} />}
			<Pictured pictures={desk?.pictures ?? []} />
			<Recipes recipes={known.recipes} of={called} option={value.key} canGrow={hasGrown(value)} onGrow={onGrow} />
			{containers.map((pot, index) => (
				<div key={pot.id} className="mt-4">
					<Pot
						pot={pot}
						called={called}
						onSpread={index === 0 && containers.length > 1 ? () => onReplace(spread(value, containers)) : null}
						{...of}
					/>
				</div>
			))}
		</fieldset>
	)
}

const hasGrown = ({ pots }: Option) => pots.some(({ lines }) => lines.some(({ grows }) => grows !== null))
