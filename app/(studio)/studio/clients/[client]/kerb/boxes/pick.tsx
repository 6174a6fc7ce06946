import type { ReactNode } from 'react'

export type Choice = { readonly value: string; readonly label: string; readonly picture?: ReactNode }

type Props = {
	readonly name: string
	readonly legend: string
	readonly choices: readonly Choice[]
	readonly chosen: string
	readonly error?: string | undefined
	/** How many stand side by side. */
	readonly across: 2 | 3 | 4
	/** What a choice of its own is marked with, for what depends on it. */
	readonly mark?: (value: string) => string
}

const columns = { 2: 'grid-cols-2', 3: 'grid-cols-3', 4: 'grid-cols-4' } as const

/** One of a few, each as large as a thumb, by its picture where it has one. */
export function Pick({ name, legend, choices, chosen, error, across, mark }: Props) {
	return (
		<fieldset id={name} className="mt-5" aria-describedby={error ? `${name}-error` : undefined}>
			<legend className="font-semibold">{legend}</legend>
			{error && (
				<p id={`${name}-error`} className="mt-1 font-semibold text-warn">
					{error}
				</p>
			)}
			<div className={`mt-1.5 grid gap-2 ${columns[across]}`}>
				{choices.map(({ value, label, picture }) => (
					<label key={value} className={`pick ${across === 4 ? 'text-xs' : ''}`}>
						<input type="radio" name={name} value={value} defaultChecked={value === chosen} className={mark?.(value)} />
						{picture}
						<span>{label}</span>
					</label>
				))}
			</div>
		</fieldset>
	)
}

type TickProps = { readonly name: string; readonly label: string; readonly isTicked: boolean }

/** Yes or not said, as large as a thumb. */
export function TickPick({ name, label, isTicked }: TickProps) {
	return (
		<label className="pick">
			<input type="checkbox" id={name} name={name} defaultChecked={isTicked} />
			<span>{label}</span>
		</label>
	)
}
