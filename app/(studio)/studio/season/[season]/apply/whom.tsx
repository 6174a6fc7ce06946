import { v7 } from 'uuid'
import { ChoiceField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { Thumbnail } from '@/app/ui/studio/thumbnail'
import { numberWord } from '@/lib/format/words'
import { mostClients } from '@/lib/forms/catalogue/start-forms'
import type { Attempt } from '@/lib/forms/read'
import type { ToApply } from '@/lib/season/collection/pages'
import { applyToClients } from './actions'

type Props = { readonly page: ToApply; readonly attempt: Attempt }

const choices = [
	{ value: '1', label: 'the one that fits best' },
	{ value: '2', label: 'the best two' },
	{ value: '3', label: 'the best three' },
]
const clients = (count: number) => `${numberWord(count)} client${count === 1 ? ' has' : 's have'} no design yet`

/** Every client without a design, all of them ticked, to be drafted for in one act. */
export function Whom({ page: { season, clients: all, problems }, attempt: { typed, errors } }: Props) {
	if (all.length === 0) return <p className="mt-6 text-lg">Every client has a design for the season.</p>
	if (problems.length > 0)
		return (
			<p className="said mt-6">
				The collection is not ready to be applied:{' '}
				<a href={`/studio/season/${season.id}/collection`}>see what is missing</a>.
			</p>
		)
	const ready = all.filter(({ containers }) => containers > 0).slice(0, mostClients)
	const bare = all.filter(({ containers }) => containers === 0)
	const tried = typed.client === undefined ? null : new Set([typed.client].flat())
	return (
		<form key={JSON.stringify(typed)} action={applyToClients} noValidate>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="season" value={season.id} />
			<div className="flex flex-wrap items-end gap-x-8 gap-y-3">
				<p className="text-lg">
					{clients(all.length)}
					{ready.length > 1 &&
						(ready.length < all.length ? '; those that can be drafted are ticked.' : '; all are ticked.')}
				</p>
				<div className="w-56">
					<ChoiceField
						name="options"
						label="Each is offered"
						value={one(typed, 'options') || '2'}
						choices={choices}
						error={errors.options}
					/>
				</div>
				<button type="submit" className="act first" disabled={ready.length === 0}>
					Draft for those ticked
				</button>
			</div>
			<ul id="client" className="mt-6 grid gap-x-10 border-t border-line md:grid-cols-2 xl:grid-cols-3">
				{ready.map(({ id, name, kind, place, wall, containers }) => (
					<li key={id} className="border-b border-line">
						<label className="flex min-h-14 items-center gap-3 py-1">
							<input
								type="checkbox"
								className="tick"
								name="client"
								value={id}
								defaultChecked={tried === null || tried.has(id)}
							/>
							<Thumbnail wall={wall} hexes="" picture={null} />
							<span className="min-w-0">
								<b className="block font-semibold">{name}</b>
								<span className="block text-sm text-soft">
									{kind} · {place?.toLowerCase()}, {containers}
								</span>
							</span>
						</label>
					</li>
				))}
			</ul>
			{bare.length > 0 && (
				<p className="mt-3 text-soft">
					With no container to fill yet:{' '}
					{bare.map(({ id, name }, index) => (
						<span key={id}>
							{index > 0 && ', '}
							<a href={`/studio/clients/${id}`}>{name}</a>
						</span>
					))}
					.
				</p>
			)}
		</form>
	)
}
