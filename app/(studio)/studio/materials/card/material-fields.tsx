import { ChoiceField, TextField, TickField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import * as lists from '@/lib/recipe/material'
import { Traits, traitLabels } from './traits'

const choices = [
	['kind', 'Kind', lists.kinds],
	['piece', 'Handled as', lists.pieces],
	['role', 'Role', lists.roles],
	['unit', 'Counted by the', lists.units],
] as const

const own = {
	name: 'Name',
	piecesPerUnit: 'Pieces in one of these',
	hex: 'Its colour',
	supplier: 'Supplier',
	size: 'How many in it',
	price: 'Its price',
	freightPercent: 'Freight, per cent',
}

/** What each box of the card is called. */
export const materialLabels = { ...own, ...traitLabels }

type Props = { readonly typed: Typed; readonly errors: FieldErrors; readonly unit: LengthUnit }

/** The whole card of a material. */
export function MaterialFields({ typed, errors, unit }: Props) {
	const field = (name: keyof typeof own, more = {}) => (
		<TextField name={name} label={own[name]} value={one(typed, name)} error={errors[name]} {...more} />
	)
	return (
		<>
			{field('name')}
			<div className="grid gap-x-6 sm:grid-cols-2">
				{choices.map(([name, label, values]) => (
					<ChoiceField
						key={name}
						name={name}
						label={label}
						value={one(typed, name) || values[0]}
						choices={values.map((value) => ({ value, label: value }))}
						error={errors[name]}
					/>
				))}
			</div>
			{field('piecesPerUnit', {
				hint: 'Usable tips in a kg; 1 for what is counted singly.',
				inputMode: 'decimal',
			})}
			{field('hex', { type: 'color' })}
			<Traits typed={typed} errors={errors} unit={unit} />
			<fieldset className="mt-6">
				<legend className="text-lg font-bold">Hazards, from a published list</legend>
				<TickField
					name="isPoisonousToPeople"
					label="poisonous to people"
					isTicked={one(typed, 'isPoisonousToPeople') === 'on'}
				/>
				<TickField
					name="isPoisonousToPets"
					label="poisonous to pets"
					isTicked={one(typed, 'isPoisonousToPets') === 'on'}
				/>
				<TickField name="hasSmallParts" label="small parts" isTicked={one(typed, 'hasSmallParts') === 'on'} />
			</fieldset>
			<fieldset className="mt-6">
				<legend className="text-lg font-bold">The pack</legend>
				{field('supplier')}
				{field('size', { inputMode: 'decimal' })}
				{field('price', { inputMode: 'decimal' })}
				{field('freightPercent', { inputMode: 'decimal' })}
			</fieldset>
		</>
	)
}
