import { described } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { MarginBeside } from '@/lib/agreement/renewal/margin-beside'
import { priceBox } from '@/lib/agreement/studio/form/renew-form'
import { amountText } from '@/lib/agreement/studio/form/terms-text'
import type { EndingAgreement } from '@/lib/agreement/studio/shown'
import { fullDay } from '@/lib/format/day'
import type { MoneyFormat } from '@/lib/format/money'
import { capital, percent } from '@/lib/format/words'
import type { FieldErrors, Typed } from '@/lib/forms/read'
import { seasonName } from '@/lib/season/season'

type Props = {
	readonly endings: readonly EndingAgreement[]
	readonly money: MoneyFormat
	/** What was ticked and typed when it went wrong; nothing when it is asked for anew. */
	readonly typed: Typed
	readonly errors: FieldErrors
}

/** Old and new side by side, season by season and in all; each new price can be typed over. */
export function Rows({ endings, ...rest }: Props) {
	return (
		<table className="ledger season-ledger drafts mt-6">
			<caption className="pb-3 text-start text-soft">
				Each that is ticked is issued for another year at the prices in its boxes, and mailed to who may sign. Margin is
				that of what was approved last year, before overhead, and what it would have been at the new price.
			</caption>
			<thead>
				<tr className="border-b-2 border-ink text-sm text-soft">
					<th scope="col">
						<span className="sr-only">Renew</span>
					</th>
					<th scope="col">Client</th>
					<th scope="col">Season</th>
					<th scope="col" className="sum">
						Before
					</th>
					<th scope="col" className="sum">
						New
					</th>
					<th scope="col" className="sum">
						Margin
					</th>
				</tr>
			</thead>
			{endings.map((ending) => (
				<Ending key={ending.id} ending={ending} {...rest} />
			))}
		</table>
	)
}

function Margin({ of }: { readonly of: MarginBeside | null }) {
	if (of === null) return <td data-head="Margin" className="sum text-soft" />
	return (
		<td data-head="Margin" className="sum">
			{percent(of.was)} <span aria-hidden="true">→</span>
			<span className="sr-only">, then</span> {of.is === null ? '–' : percent(of.is)}
		</td>
	)
}

function Ending({
	ending: { id, name, to, next, margins, renewedBy },
	money,
	typed,
	errors,
}: Omit<Props, 'endings'> & { readonly ending: EndingAgreement }) {
	const isAnew = !('once' in typed)
	const picked = [typed.pick ?? []].flat()
	return (
		<tbody>
			<tr>
				<td className="w-12">
					{renewedBy === null && (
						<input
							type="checkbox"
							className="tick"
							name="pick"
							value={id}
							data-name={name}
							aria-label={`Renew ${name}`}
							defaultChecked={isAnew || picked.includes(id)}
						/>
					)}
				</td>
				<td className="client">
					<a href={`/studio/agreements/${renewedBy ?? id}`} className="name text-base">
						{name}
					</a>
					<span className="block text-soft">{renewedBy === null ? `until ${fullDay(to)}` : 'renewed already'}</span>
				</td>
				<td className="more">In all</td>
				<td data-head="Before" className="sum">
					{money(next.total.was)}
				</td>
				<td data-head="New" className="sum font-bold">
					{money(next.total.is)}
				</td>
				<td />
			</tr>
			{renewedBy === null &&
				next.seasons.map(({ season, was, is }, index) => {
					const box = priceBox(id, season)
					const label = `${name}, ${seasonName(season)}`
					return (
						<tr key={box}>
							<td />
							<td />
							<td className="more">{capital(seasonName(season))}</td>
							<td data-head="Before" className="sum">
								{was === null ? 'quoted' : money(was)}
							</td>
							<td className="sum">
								{is === null ? (
									'quoted'
								) : (
									<>
										{errors[box] && (
											<p id={`${box}-error`} className="font-semibold text-warn">
												{errors[box]}
											</p>
										)}
										<input
											className="box small w-32 text-end tabular-nums"
											inputMode="decimal"
											aria-label={label}
											defaultValue={isAnew ? amountText(is) : one(typed, box)}
											autoComplete="off"
											{...described({ name: box, error: errors[box] })}
										/>
									</>
								)}
							</td>
							<Margin of={margins[index] ?? null} />
						</tr>
					)
				})}
		</tbody>
	)
}
