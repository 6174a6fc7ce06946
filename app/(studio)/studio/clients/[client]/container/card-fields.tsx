import { ChoiceField, TextField, TickField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { lights, limits, shapes, stands, walls, waterers } from '@/lib/container/card'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { type CardText, MeasuredCard } from './drawing/measured-card'
import { type Box, boxLabels } from './labels'

type Props = { readonly typed: Typed; readonly errors: FieldErrors; readonly unit: LengthUnit }
type Entry = readonly [name: string, label: string]

const measures: readonly (readonly [box: Box, hint?: string])[] = [
	['topCm', 'A box: along the front.'],
	['topDepthCm', 'For boxes; empty when it is as deep as wide.'],
	['bottomCm'],
	['bottomDepthCm', 'Empty when it narrows as the front does.'],
	['heightCm'],
	['wallCm', 'Empty: usual for its material.'],
	['headspaceCm', 'Empty: the usual 5 cm (2 in).'],
	['soilDepthCm', 'Where there is a false bottom.'],
	['sillToGlassCm', 'For window boxes.'],
	['walkLeftCm', 'The local authority says how much has to stay clear.'],
]

const choices: readonly (readonly [box: Box, values: readonly string[]])[] = [
	['shape', shapes],
	['wall', walls],
	['owner', ['client', 'studio']],
	['light', lights],
	['stands', stands],
	['waterer', waterers],
	['limitedWeight', limits],
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

const vesselWeight: Readonly<Record<LengthUnit, readonly [label: string, hint: string]>> = {
	in: ['Weight of the empty vessel, lb', 'Another unit with its name: 12 kg.'],
	cm: ['Weight of the empty vessel, kg', 'Another unit with its name: 26 lb.'],
}

/** What each box of the card is called. */
export const cardLabels = (unit: LengthUnit): Readonly<Record<string, string>> => ({
	...boxLabels,
	vesselKg: vesselWeight[unit][0],
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
				label={boxLabels.name}
				hint="As in “left of the door”."
				value={one(typed, 'name')}
				error={errors.name}
			/>
			<div className="grid max-w-3xl gap-x-6 sm:grid-cols-2">
				{choices.map(([name, values]) => (
					<ChoiceField
						key={name}
						name={name}
						label={boxLabels[name]}
						value={one(typed, name) || String(values[0])}
						choices={values.map((value) => ({ value, label: value }))}
						error={errors[name]}
					/>
				))}
				<TextField
					name="colour"
					label={boxLabels.colour}
					type="color"
					value={one(typed, 'colour')}
					error={errors.colour}
				/>
			</div>
			<fieldset className="mt-8">
				<legend className="text-lg font-bold">Outer measures, in {unit === 'in' ? 'inches' : 'centimetres'}</legend>
				<p className="text-soft">{howToType[unit]}</p>
				<MeasuredCard typed={textOf(typed)} unit={unit} labels={cardLabels(unit)}>
					<div className="grid items-end gap-x-6 sm:grid-cols-2">
						{measures.map(([name, hint]) => (
							<TextField
								key={name}
								name={name}
								label={boxLabels[name]}
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
