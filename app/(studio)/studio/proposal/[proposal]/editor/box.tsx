'use client'
import { type ReactNode, useId } from 'react'

/** The id of a box by its path in the draft, so that what is wrong can lead to it. */
export const boxId = (path: string) => `draft.${path}`

type Common = {
	readonly label: string
	/** Its path in the draft, where something can lead to it. */
	readonly at?: string
	readonly value: string
	readonly onChange: (next: string) => void
	readonly error?: string | undefined
}

/** A labelled box of the editor with what is wrong under it. */
function Labelled({
	label,
	error,
	id,
	hidden,
	children,
}: {
	readonly label: string
	readonly error: string | undefined
	readonly id: string
	readonly hidden: boolean
	readonly children: ReactNode
}) {
	return (
		<div className="min-w-0">
			<label htmlFor={id} className={hidden ? 'sr-only' : 'block text-sm font-semibold'}>
				{label}
			</label>
			{children}
			{error && (
				<p id={`${id}-error`} className="text-sm font-semibold text-warn">
					{error}
				</p>
			)}
		</div>
	)
}

function useBoxId(at: string | undefined): string {
	const own = useId()
	return at === undefined ? own : boxId(at)
}

type BoxProps = Common & {
	readonly type?: 'text' | 'date' | 'color'
	readonly inputMode?: 'decimal'
	readonly hidden?: boolean
	readonly className?: string
}

export function Box({
	label,
	value,
	onChange,
	at,
	error,
	type = 'text',
	inputMode,
	hidden = false,
	className = '',
}: BoxProps) {
	const id = useBoxId(at)
	return (
		<Labelled label={label} error={error} id={id} hidden={hidden}>
			<input
				id={id}
				type={type}
				inputMode={inputMode}
				autoComplete="off"
				className={`box small ${className}`}
				value={value}
				aria-invalid={error ? true : undefined}
				aria-describedby={error ? `${id}-error` : undefined}
				onChange={(event) => onChange(event.target.value)}
			/>
		</Labelled>
	)
}

export function Words({ label, value, onChange, at, error, rows }: Common & { readonly rows: number }) {
	const id = useBoxId(at)
	return (
		<Labelled label={label} error={error} id={id} hidden={false}>
			<textarea
				id={id}
				rows={rows}
				className="box"
				value={value}
				aria-invalid={error ? true : undefined}
				onChange={(event) => onChange(event.target.value)}
			/>
		</Labelled>
	)
}

type PickProps = Common & { readonly hidden?: boolean; readonly children: ReactNode }

export function Pick({ label, value, onChange, at, error, hidden = false, children }: PickProps) {
	const id = useBoxId(at)
	return (
		<Labelled label={label} error={error} id={id} hidden={hidden}>
			<select id={id} className="box small" value={value} onChange={(event) => onChange(event.target.value)}>
				{children}
			</select>
		</Labelled>
	)
}

export function Tick({
	label,
	at,
	isTicked,
	onChange,
}: {
	readonly label: string
	readonly at?: string
	readonly isTicked: boolean
	readonly onChange: (next: boolean) => void
}) {
	return (
		<label className="flex min-h-8 items-center gap-2">
			<input
				type="checkbox"
				id={at && boxId(at)}
				className="tick"
				checked={isTicked}
				onChange={(event) => onChange(event.target.checked)}
			/>
			{label}
		</label>
	)
}

type DoesProps = { readonly at?: string; readonly children: ReactNode; readonly onClick: () => void }

export function Does({ at, children, onClick }: DoesProps) {
	return (
		<button type="button" id={at && boxId(at)} className="does" onClick={onClick}>
			{children}
		</button>
	)
}
