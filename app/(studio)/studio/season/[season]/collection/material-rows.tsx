import type { FieldErrors, Typed } from '@/lib/forms/read'
import { holdings, roles } from '@/lib/recipe/material'
import type { CollectionPage } from '@/lib/season/collection/pages'

type Props = {
	readonly materials: CollectionPage['materials']
	readonly typed: Typed
	readonly errors: FieldErrors
	readonly rows: number
}

const whose = { sold: 'sold', lent: 'lent', own: 'client’s own' } as const
const at = (typed: Typed, name: string, index: number): string => [typed[name] ?? []].flat()[index] ?? ''

/** What an extra is made of: material, count, whose it is; a row without a material is left out. */
export function MaterialRows({ materials, typed, errors, rows }: Props) {
	return (
		<fieldset className="mt-5">
			<legend className="font-semibold">What it is made of</legend>
			<p className="text-sm text-soft">A row without a material is left out.</p>
			<ul className="mt-1.5 grid gap-y-1">
				{Array.from({ length: rows }, (_, index) => `${index}`).map((row) => {
					const index = Number(row)
					const error = errors[`material.${row}`] ?? errors[`count.${row}`] ?? errors[`holding.${row}`]
					return (
						<li key={row}>
							<div className="grid grid-cols-2 gap-2 pb-2 sm:grid-cols-[1fr_5rem_7.5rem] sm:pb-0">
								<select
									name="material"
									id={`material.${row}`}
									aria-label={`Material ${index + 1}`}
									className="box col-span-2 sm:col-span-1"
									defaultValue={at(typed, 'material', index)}
								>
									<option value="">nothing</option>
									{roles.map((role) => (
										<optgroup key={role} label={role}>
											{materials
												.filter((each) => each.role === role)
												.map(({ id, name, unit }) => (
													<option key={id} value={`${id} ${role}`}>
														{name}, by the {unit}
													</option>
												))}
										</optgroup>
									))}
								</select>
								<input
									name="count"
									id={`count.${row}`}
									aria-label={`Count ${index + 1}`}
									inputMode="decimal"
									autoComplete="off"
									className="box text-end"
									defaultValue={at(typed, 'count', index) || '1'}
								/>
								<select
									name="holding"
									id={`holding.${row}`}
									aria-label={`Whose it is ${index + 1}`}
									className="box"
									defaultValue={at(typed, 'holding', index) || 'lent'}
								>
									{holdings.map((holding) => (
										<option key={holding} value={holding}>
											{whose[holding]}
										</option>
									))}
								</select>
							</div>
							{error && <p className="text-sm font-semibold text-warn">{error}</p>}
						</li>
					)
				})}
			</ul>
		</fieldset>
	)
}
