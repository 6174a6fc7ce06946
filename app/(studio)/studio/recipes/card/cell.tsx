import type { ReactNode } from 'react'
import type { RowText } from '@/lib/forms/catalogue/recipe-text'
import { type LineField, lineLabels, spans } from './words'

type Common = { readonly field: LineField; readonly n: number; readonly error: string | undefined }

/** One box of one line: its label stands above on a phone, and at the head of the column on a laptop. */
export function Cell({ field, n, error, children }: Common & { readonly children: ReactNode }) {
	return (
		<div className={`min-w-0 lg:col-span-1 ${spans[field]}`}>
			<label htmlFor={`${field}.${n}`} className={`block text-xs text-soft ${n > 0 ? 'lg:sr-only' : ''}`}>
				{lineLabels[field]}
				<span className="sr-only">, line {n + 1}</span>
			</label>
			{children}
			{error && (
				<p id={`${field}.${n}-error`} className="text-sm font-semibold text-warn">
					{error}
				</p>
			)}
		</div>
	)
}

const box = ({ field, n, error }: Common) => ({
	id: `${field}.${n}`,
	name: field,
	className: 'box small',
	...(error && { 'aria-invalid': true as const, 'aria-describedby': `${field}.${n}-error` }),
})

type Boxed = Common & { readonly field: keyof RowText; readonly value: string }
export type Choice = { readonly value: string; readonly label: string }
type Group = { readonly role: string; readonly of: readonly Choice[] }

export function Write({ value, ...common }: Boxed) {
	return (
		<Cell {...common}>
			<input {...box(common)} inputMode="decimal" autoComplete="off" defaultValue={value} />
		</Cell>
	)
}

const options = (of: readonly Choice[]) =>
	of.map(({ value, label }) => (
		<option key={value} value={value}>
			{label}
		</option>
	))

export function Choose({
	value,
	choices,
	groups = [],
	...common
}: Boxed & { readonly choices: readonly Choice[]; readonly groups?: readonly Group[] }) {
	return (
		<Cell {...common}>
			<select {...box(common)} defaultValue={value}>
				{options(choices)}
				{groups.map(({ role, of }) => (
					<optgroup key={role} label={role}>
						{options(of)}
					</optgroup>
				))}
			</select>
		</Cell>
	)
}
