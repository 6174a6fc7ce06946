import type { ReactNode } from 'react'

type Common = {
	readonly name: string
	/** Where more than one form of a page has a field of this name. */
	readonly id?: string | undefined
	readonly label: string
	readonly hint?: string | undefined
	readonly error?: string | undefined
}

/** What ties a box to its hint and its error. */
export function described({ name, id = name, hint, error }: Pick<Common, 'name' | 'id' | 'hint' | 'error'>) {
	const ids = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ')
	return { id, name, ...(ids && { 'aria-describedby': ids }), ...(error && { 'aria-invalid': true as const }) }
}

/** A label, a hint where one helps, what is wrong beside it, and the box itself. */
export function Field({ name, id = name, label, hint, error, children }: Common & { readonly children: ReactNode }) {
	return (
		<div className="mt-5">
			<label htmlFor={id} className="block font-semibold">
				{label}
			</label>
			{hint && (
				<p id={`${id}-hint`} className="text-sm text-soft">
					{hint}
				</p>
			)}
			{error && (
				<p id={`${id}-error`} className="mt-1 font-semibold text-warn">
					{error}
				</p>
			)}
			<div className="mt-1.5">{children}</div>
		</div>
	)
}

type TextProps = Common & {
	readonly value?: string | undefined
	readonly type?: string
	readonly autoComplete?: string
	readonly inputMode?: 'decimal' | 'numeric' | 'email'
	/** The list of what may be meant, by its id. */
	readonly list?: string
}

export function TextField({ value = '', type = 'text', autoComplete = 'off', inputMode, list, ...common }: TextProps) {
	return (
		<Field {...common}>
			<input
				className="box"
				type={type}
				defaultValue={value}
				autoComplete={autoComplete}
				inputMode={inputMode}
				list={list}
				{...described(common)}
			/>
		</Field>
	)
}

export function WordsField({
	value = '',
	rows = 3,
	...common
}: Common & { readonly value?: string | undefined; readonly rows?: number }) {
	return (
		<Field {...common}>
			<textarea className="box" rows={rows} defaultValue={value} {...described(common)} />
		</Field>
	)
}

type Choice = { readonly value: string; readonly label: string }

export function ChoiceField({
	value,
	choices,
	...common
}: Common & { readonly value?: string | undefined; readonly choices: readonly Choice[] }) {
	return (
		<Field {...common}>
			<select className="box" defaultValue={value} {...described(common)}>
				{choices.map((choice) => (
					<option key={choice.value} value={choice.value}>
						{choice.label}
					</option>
				))}
			</select>
		</Field>
	)
}

export function TickField({
	name,
	label,
	isTicked = false,
}: {
	readonly name: string
	readonly label: string
	readonly isTicked?: boolean
}) {
	return (
		<label className="mt-3 flex min-h-11 items-center gap-3">
			<input type="checkbox" className="tick" name={name} id={name} defaultChecked={isTicked} />
			<span>{label}</span>
		</label>
	)
}
