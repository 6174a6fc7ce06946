import { ChoiceField, described, Field, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { AgreementFacts } from '@/lib/agreement/facts'
import { capital } from '@/lib/format/words'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { quarters, seasonName } from '@/lib/season/season'
import { visitKinds } from '@/lib/visit/visit'

export type Boxes = { readonly typed: Typed; readonly errors: FieldErrors }
type Props = Boxes & { readonly index: number; readonly containers: AgreementFacts['containers'] }

const none = { value: '', label: 'none: leave it out' }
const seasons = [none, ...quarters.map((value) => ({ value, label: value }))]
const prices = [
	{ value: 'quoted', label: 'quoted each season' },
	{ value: 'fixed', label: 'a fixed price' },
]
const visitLabels = {
	install: 'Installs',
	refresh: 'Refreshes',
	watering: 'Waterings',
	check: 'Checks',
	'take-down': 'Take-downs',
}

function named(text: string, year: string): string {
	const quarter = quarters.find((each) => each === text)
	return quarter !== undefined && /^\d{4}$/.test(year) ? seasonName({ quarter, year: Number(year) }) : `${text} ${year}`
}

/** One season: what it is, what it costs, which containers, how many visits of each kind. */
export function SeasonFields({ index, typed, errors, containers }: Props) {
	const box = (name: string) => `season.${index}.${name}`
	const quarter = one(typed, box('quarter'))
	const year = one(typed, box('year'))
	const ticked = [typed[box('container')] ?? []].flat()
	const wrong = Object.entries(errors).find(([name]) => name.startsWith(`${box('container')}.`))?.[1]
	return (
		<fieldset className="mt-6 border-t border-line pt-3">
			<legend className="float-left text-lg font-bold">
				{quarter === '' ? 'Another season' : capital(named(quarter, year))}
			</legend>
			<div className="clear-both grid gap-x-6 sm:grid-cols-4">
				<ChoiceField
					name={box('quarter')}
					label="Season"
					value={quarter}
					choices={seasons}
					error={errors[box('quarter')]}
				/>
				<TextField name={box('year')} label="Year" inputMode="numeric" value={year} error={errors[box('year')]} />
				<ChoiceField
					name={box('is')}
					label="Price"
					value={one(typed, box('is')) || 'quoted'}
					choices={prices}
					error={errors[box('is')]}
				/>
				<TextField
					name={box('price')}
					label="Fixed at"
					inputMode="decimal"
					value={one(typed, box('price'))}
					error={errors[box('price')]}
				/>
			</div>
			<fieldset className="mt-5">
				<legend className="font-semibold" id={box('container')}>
					Containers
				</legend>
				{wrong && <p className="font-semibold text-warn">{wrong}</p>}
				<div className="flex flex-wrap gap-x-6">
					{containers.map(({ id, name }) => (
						<label key={id} className="flex min-h-11 items-center gap-3">
							<input
								type="checkbox"
								className="tick"
								name={box('container')}
								value={id}
								defaultChecked={ticked.includes(id)}
							/>
							<span>{name}</span>
						</label>
					))}
				</div>
			</fieldset>
			<div className="grid grid-cols-2 gap-x-6 sm:grid-cols-5">
				{visitKinds.map((kind) => (
					<Field key={kind} name={box(kind)} label={visitLabels[kind]} error={errors[box(kind)]}>
						<input
							className="box text-end tabular-nums"
							inputMode="numeric"
							defaultValue={one(typed, box(kind)) || '0'}
							autoComplete="off"
							{...described({ name: box(kind), error: errors[box(kind)] })}
						/>
					</Field>
				))}
			</div>
		</fieldset>
	)
}
