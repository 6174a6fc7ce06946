type Props = {
	readonly pictures: readonly { readonly file: string; readonly alt: string; readonly caption: string | null }[]
}

/** What a mail shows, side by side where there are several. */
export function Pictures({ pictures }: Props) {
	if (pictures.length === 0) return null
	return (
		<ul className="mb-4 flex gap-0.5">
			{pictures.map(({ file, alt, caption }) => (
				<li key={file} className="min-w-0 flex-1">
					<img src={`/demo/mail/${file}`} alt={alt} className="block w-full" loading="lazy" />
					{caption !== null && <p className="mt-1 text-sm text-soft">{caption}</p>}
				</li>
			))}
		</ul>
	)
}
