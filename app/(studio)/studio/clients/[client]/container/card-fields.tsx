import { ChoiceField, TextField, TickField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { lights, limits, shapes, stands, walls, waterers } from '@/lib/container/card'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { type CardText, MeasuredCard } from './drawing/measured-card'

type Props = { readonly typed: Typed; readonly errors: FieldErrors; readonly unit: LengthUnit }
type Entry = readonly [name: string, label: string, hint?: string]

const measures: readonly Entry[] = [
	['topCm', 'Across at the rim', 'A box: along the front.'],
	['topDepthCm', 'Front to back at the rim', 'For boxes; empty when it is as deep as wide.'],
	['bottomCm', 'Across at the foot'],
	['bottomDepthCm', 'Front to back at the foot', 'Empty when it narrows as the front does.'],
	['heightCm', 'Height'],
	['wallCm', 'Thickness of the wall', 'Empty: usual for its material.'],
	['headspaceCm', 'From soil to rim', 'Empty: the usual 5 cm (2 in).'],
	['soilDepthCm', 'True depth of soil', 'Where there is a false bottom.'],
	['sillToGlassCm', 'From sill to glass', 'For window boxes.'],
	['walkLeftCm', 'Width of the walk left', 'The local authority says how much has to stay clear.'],
]

const choices: readonly (readonly [name: string, label: string, values: readonly string[]])[] = [
	['shape', 'Shape', shapes],
	['wall', 'Material', walls],
	['owner', 'Whose it is', ['client', 'studio']],
	['light', 'Light', lights],
	['stands', 'Stands', stands],
	['waterer', 'Who waters', waterers],
	['limitedWeight', 'Weight limited by', limits],
]

const ticks: readonly Entry[] = [
	['hasLiner', 'has a liner'],
	['hasDrainHole', 'has a drain hole'],
	['isWindy', 'stands in the wind'],
	['isUnderEave', 'under an eave, gets no rain'],
	['hasRoadSalt', 'gets road salt'],
	['outletNear', 'an outlet is near'],
	['hoseNear', 'a hose is near'],
]

const own = { name: 'Name', colour: 'Its colour' }

const vesselWeight: Readonly<Record<LengthUnit, readonly [label: string, hint: string]>> = {
	in: ['Weight of the empty vessel, lb', 'Another unit with its name: 12 kg.'],
	cm: ['Weight of the empty vessel, kg', 'Another unit with its name: 26 lb.'],
}

/** What each box of the card is called. */
export const cardLabels = (unit: LengthUnit): Readonly<Record<string, string>> => ({
	...own,
	vesselKg: vesselWeight[unit][0],
	...Object.fromEntries([...measures, ...choices].map(([name, label]) => [name, label])),
})

const howToType: Readonly<Record<LengthUnit, string>> = {
	in: 'As a tape shows them: 18 1/2, 18½ or 18.5. Another unit with its name: 46 cm.',
	cm: 'As in 46.5. Another unit with its name: 18 1/2 in.',
}

const textOf = (typed: Typed): CardText =>
	Object.fromEntries(Object.keys(typed).map((name) => [name, one(typed, name)]))

/** The whole card of a container. */
export function CardFields({ typed, errors, unit }: Props) {
	const [weightLabel, weightHint] = vesselWeight[unit]
	return (
		<>
			<TextField
				name="name"
				label={own.name}
				hint="As in “left of the door”."
				value={one(typed, 'name')}
				error={errors.name}
			/>
			<div className="grid max-w-3xl gap-x-6 sm:grid-cols-2">
				{choices.map(([name, label, values]) => (
					<ChoiceField
						key={name}
						name={name}
						label={label}
						value={one(typed, name) || String(values[0])}
						choices={values.map((value) => ({ value, label: value }))}
						error={errors[name]}
					/>
				))}
				<TextField name="colour" label={own.colour} type="color" value={one(typed, 'colour')} error={errors.colour} />
			</div>
			<fieldset className="mt-8">
				<legend className="text-lg font-bold">Outer measures, in {unit === 'in' ? 'inches' : 'centimetres'}</legend>
				<p className="text-soft">{howToType[unit]}</p>
				<MeasuredCard typed={textOf(typed)} unit={unit} labels={cardLabels(unit)}>
					<div className="grid items-end gap-x-6 sm:grid-cols-2">
						{measures.map(([name, label, hint]) => (
							<TextField
								key={name}
								name={name}
								label={label}
								hint={hint}
								inputMode="decimal"
								value={one(typed, name)}
								error={errors[name]}
							/>
						))}
						<TextField
							name="vesselKg"
							label={weightLabel}
							hint={weightHint}
							inputMode="decimal"
							value={one(typed, 'vesselKg')}
							error={errors.vesselKg}
						/>
					</div>
				</MeasuredCard>
			</fieldset>
			<fieldset className="mt-8">
				<legend className="text-lg font-bold">Around it</legend>
				{ticks.map(([name, label]) => (
					<TickField key={name} name={name} label={label} isTicked={one(typed, name) === 'on'} />
				))}
			</fieldset>
			<p className="mt-4 text-soft">
				On a deck, balcony, roof, bracket or railing a licensed engineer says what it may carry, full and wet.
			</p>
		</>
	)
}
