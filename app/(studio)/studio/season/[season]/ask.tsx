import type { MoneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { kept } from '@/lib/proposal/state'
import { groups } from '@/lib/season/group'
import { isNarrowed, type LedgerAsk, sorts } from '@/lib/season/ledger-ask'
import type { Cents } from '@/lib/units/cents'

type Choice = readonly (readonly [value: string, label: string])[]

const shows: Choice = [
	['', 'Everybody'],
	...groups.map((group) => [group, capital(group)] as const),
	...[...kept, 'lapsed' as const].map((state) => [state, `Only: ${state}`] as const),
]
const kinds: Choice = [
	['', 'Businesses and households'],
	['business', 'Businesses'],
	['household', 'Households'],
]
const orders: Record<(typeof sorts)[number], string> = {
	'answer by': 'Answer by, the nearest first',
	'days waited': 'Days waited, the longest first',
	name: 'Name',
	value: 'Value, the highest first',
	margin: 'Margin, the lowest first',
}

function Select({ name, label, value, of }: { name: string; label: string; value: string; of: Choice }) {
	return (
		<div className="grow">
			<label htmlFor={`ask-${name}`} className="block text-sm text-soft">
				{label}
			</label>
			<select id={`ask-${name}`} name={name} className="box small" defaultValue={value}>
				{of.map(([key, words]) => (
					<option key={key} value={key}>
						{words}
					</option>
				))}
			</select>
		</div>
	)
}

function Words({ name, label, value }: { name: string; label: string; value: string }) {
	return (
		<div className="grow">
			<label htmlFor={`ask-${name}`} className="block text-sm text-soft">
				{label}
			</label>
			<input
				id={`ask-${name}`}
				name={name}
				className="box small"
				defaultValue={value}
				maxLength={60}
				autoComplete="off"
			/>
		</div>
	)
}

type Props = {
	readonly path: string
	readonly ask: LedgerAsk
	readonly asked: { readonly count: number; readonly valueCents: Cents } | undefined
	readonly all: number
	readonly money: MoneyFormat
}

/** Which rows are shown and in which order; the address of the page says it. */
export function Ask({ path, ask, asked, all, money }: Props) {
	return (
		<details className="mt-6" open={isNarrowed(ask)}>
			<summary className="does inline-block">Show some of them, or in another order</summary>
			<form method="get" action={path} className="mt-2 flex flex-wrap items-end gap-x-5 gap-y-3">
				<Select name="show" label="Show" value={ask.show} of={shows} />
				<Select name="kind" label="Of" value={ask.kind} of={kinds} />
				<Words name="name" label="Client’s name holds" value={ask.name} />
				<Words name="palette" label="Palette’s name holds" value={ask.palette} />
				<Select name="sort" label="In the order of" value={ask.sort} of={sorts.map((sort) => [sort, orders[sort]])} />
				<button type="submit" className="act">
					Show
				</button>
			</form>
			{asked && (
				<p className="mt-3" role="status">
					Shown: {asked.count} of {all}, {money(asked.valueCents)} before tax. <a href={path}>Show everybody</a>
				</p>
			)}
		</details>
	)
}
