import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { inUse, type Template } from '@/lib/agreement/template/template'
import type { Boxes } from './season-fields'

const waterers = [
	{ value: '', label: 'not said yet' },
	{ value: 'client', label: 'the client' },
	{ value: 'studio', label: 'we do' },
]

/** What is agreed beside seasons and money. */
export function SaidFields({ typed, errors }: Boxes) {
	return (
		<fieldset className="mt-8 border-t border-line pt-3">
			<legend className="float-left text-xl font-bold">What else is agreed</legend>
			<div className="clear-both grid gap-x-6 sm:grid-cols-2">
				<ChoiceField
					name="waters"
					label="Who waters"
					value={one(typed, 'waters')}
					choices={waterers}
					error={errors.waters}
				/>
				<TextField
					name="lightsDownBy"
					label="Lights are taken down by"
					type="date"
					value={one(typed, 'lightsDownBy')}
					error={errors.lightsDownBy}
				/>
				<TextField name="sold" label="Sold" value={one(typed, 'sold')} error={errors.sold} />
				<TextField name="lent" label="Lent" value={one(typed, 'lent')} error={errors.lent} />
				<TextField
					name="noticeDays"
					label="Days of notice to end it early"
					inputMode="numeric"
					value={one(typed, 'noticeDays')}
					error={errors.noticeDays}
				/>
				<TextField name="law" label="It follows the law of" value={one(typed, 'law')} error={errors.law} />
			</div>
		</fieldset>
	)
}

/** Clauses that this client’s agreement goes without. */
export function LeftOut({ typed, template }: { readonly typed: Boxes['typed']; readonly template: Template }) {
	const without = [typed.without ?? []].flat()
	return (
		<details className="mt-6" open={without.length > 0}>
			<summary className="does inline-block">Leave clauses out</summary>
			<div className="mt-1 grid gap-x-6 sm:grid-cols-3">
				{inUse(template).map(({ key, title }) => (
					<label key={key} className="flex min-h-11 items-center gap-3">
						<input type="checkbox" className="tick" name="without" value={key} defaultChecked={without.includes(key)} />
						<span>Without “{title}”</span>
					</label>
				))}
			</div>
		</details>
	)
}
