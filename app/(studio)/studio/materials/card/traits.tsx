import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { monthName } from '@/lib/recipe/almanac/months'
import { forms } from '@/lib/recipe/look'
import { lightNeeds } from '@/lib/recipe/traits'

const months = Array.from({ length: 12 }, (_, index) => ({ value: String(index + 1), label: monthName(index + 1) }))
const same = (values: readonly string[]) => values.map((value) => ({ value, label: value }))

export const traitLabels = {
	form: 'Looks like',
	secondHex: 'Second colour, such as #7a5534 (optional)',
	lengthCm: 'Length of a stem, or height of a plant',
	acrossCm: 'Across',
	hadFrom: 'Can be had from',
	hadTo: 'until',
	lastsFrom: 'Stands well from',
	lastsTo: 'through',
	zone: 'Hardy to zone, such as 5b (live plants)',
	needs: 'Light',
	spacingCm: 'Spacing (live plants)',
	rootBallLitres: 'Root ball, litres (live plants)',
	kgEach: 'Weight of one piece',
	watts: 'Watts of a string (lights)',
	mostEndToEnd: 'Strings end to end at most (lights)',
	regulated: 'Regulated trade, if any (quarantine, invasive)',
}

const weighs: Readonly<Record<LengthUnit, string>> = {
	in: 'In pounds. Another unit with its name: 3 oz.',
	cm: 'In kilograms. Another unit with its name: 90 g.',
}

type Props = { readonly typed: Typed; readonly errors: FieldErrors; readonly unit: LengthUnit }

/** How a piece looks, and what it needs and does outside: what the picture and the checks are made from. */
export function Traits({ typed, errors, unit }: Props) {
	const field = (name: keyof typeof traitLabels, more: object = {}) => (
		<TextField name={name} label={traitLabels[name]} value={one(typed, name)} error={errors[name]} {...more} />
	)
	const choice = (name: keyof typeof traitLabels, choices: readonly { value: string; label: string }[]) => (
		<ChoiceField
			name={name}
			label={traitLabels[name]}
			value={one(typed, name)}
			choices={choices}
			error={errors[name]}
		/>
	)
	const number = { inputMode: 'decimal' } as const
	const length = { ...number, hint: unit === 'in' ? 'In inches.' : 'In centimetres.' }
	return (
		<fieldset className="mt-6">
			<legend className="text-lg font-bold">How it looks and stands</legend>
			<div className="grid gap-x-6 sm:grid-cols-2">
				{choice('form', same(forms))}
				{field('secondHex')}
				{field('lengthCm', length)}
				{field('acrossCm', length)}
				{choice('hadFrom', months)}
				{choice('hadTo', months)}
				{choice('lastsFrom', months)}
				{choice('lastsTo', months)}
				{field('zone')}
				{choice('needs', same(lightNeeds))}
				{field('spacingCm', length)}
				{field('rootBallLitres', number)}
				{field('kgEach', { ...number, hint: weighs[unit] })}
				{field('watts', number)}
				{field('mostEndToEnd', number)}
			</div>
			{field('regulated')}
		</fieldset>
	)
}
