import { v7 } from 'uuid'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { quantity } from '@/lib/format/words'
import type { Attempt } from '@/lib/forms/read'
import type { Unit } from '@/lib/recipe/material'
import { keepStock } from '../actions'

export const storageLabels = {
	client: 'Whose it is',
	quantity: 'How many storage holds',
	usesBefore: 'Seasons it has stood outside',
}

type Owner = { readonly id: string; readonly name: string }
type Counted = { readonly client: Owner | null; readonly quantity: number; readonly usesBefore: number }
type Props = {
	readonly of: { readonly id: string; readonly unit: Unit }
	readonly held: readonly Counted[]
	readonly clients: readonly Owner[]
	/** Whose count is to be taken again: a client's id, or nothing for the studio. */
	readonly chosen: string
	readonly attempt: Attempt
}

/** What storage holds of a material, the studio's and each client's own, and the form that counts it again. */
export function Storage({ of: { id, unit }, held, clients, chosen, attempt: { typed: tried, errors } }: Props) {
	const row = held.find(({ client }) => (client?.id ?? '') === chosen)
	const saved = { client: chosen, quantity: String(row?.quantity ?? 0), usesBefore: String(row?.usesBefore ?? 0) }
	const typed = { ...saved, ...tried }
	const owners = [
		{ value: '', label: 'the studio’s' },
		...clients.map(({ id: value, name: label }) => ({ value, label })),
	]
	return (
		<section aria-labelledby="storage" className="max-w-xl">
			<h2 id="storage" className="mt-6 text-lg">
				In storage
			</h2>
			<Held of={id} unit={unit} held={held} />
			<form action={keepStock} noValidate>
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="material" value={id} />
				<ChoiceField
					name="client"
					label={storageLabels.client}
					value={one(typed, 'client')}
					choices={owners}
					error={errors.client}
				/>
				<TextField
					name="quantity"
					label={storageLabels.quantity}
					hint={`Counted by the ${unit}; it replaces the count before.`}
					inputMode="decimal"
					value={one(typed, 'quantity')}
					error={errors.quantity}
				/>
				<TextField
					name="usesBefore"
					label={storageLabels.usesBefore}
					inputMode="numeric"
					value={one(typed, 'usesBefore')}
					error={errors.usesBefore}
				/>
				<button type="submit" className="act mt-6">
					Keep the count
				</button>
			</form>
		</section>
	)
}

const seasons = (count: number) => (count === 0 ? 'not yet outside' : `${quantity(count, 'season')} outside`)

function Held({ of, unit, held }: { readonly of: string; readonly unit: Unit; readonly held: readonly Counted[] }) {
	if (held.length === 0) return <p className="mt-2 text-soft">Nothing has been counted yet.</p>
	return (
		<ul className="mt-2">
			{held.map(({ client, quantity: count, usesBefore }) => (
				<li
					key={client?.id ?? 'studio'}
					className="flex flex-wrap items-baseline justify-between gap-x-4 border-t border-line py-2"
				>
					<span className="min-w-40">{client === null ? 'The studio’s' : client.name}</span>
					<span>
						{quantity(count, unit)}, {seasons(usesBefore)}
					</span>
					<a
						className="does"
						href={`/studio/materials/card?${new URLSearchParams({ material: of, own: client?.id ?? '' })}#storage`}
					>
						Count again<span className="sr-only">, {client === null ? 'the studio’s' : client.name}</span>
					</a>
				</li>
			))}
		</ul>
	)
}
