type Props = { readonly name: string; readonly label: string; readonly error?: string | undefined }

/** One box on its own, never ticked for them; what is wrong stands above it. */
export function TickAlone({ name, label, error }: Props) {
	const described = error === undefined ? {} : { 'aria-describedby': `${name}-error`, 'aria-invalid': true as const }
	return (
		<div className="mt-8">
			{error && (
				<p id={`${name}-error`} className="mb-1 font-semibold text-warn">
					{error}
				</p>
			)}
			<label className="flex min-h-11 items-start gap-3 text-lg">
				<input type="checkbox" className="tick mt-1" name={name} id={name} {...described} />
				<span>{label}</span>
			</label>
		</div>
	)
}
