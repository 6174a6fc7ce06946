/** A mail's plain text, its links to press. */
export function Linked({ text }: { readonly text: string }) {
	const parts = text.split(/(https?:\/\/\S+)/)
	return (
		<pre className="font-sans whitespace-pre-wrap wrap-anywhere">
			{Object.entries(parts).map(([at, part]) =>
				/^https?:/.test(part) ? (
					<a key={at} href={part}>
						{part}
					</a>
				) : (
					part
				),
			)}
		</pre>
	)
}
