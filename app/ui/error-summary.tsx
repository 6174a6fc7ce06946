import type { FieldErrors } from '@/lib/forms/read'

/** What is wrong with a form, at its top, each a link to its box. */
export function ErrorSummary({ errors }: { readonly errors: FieldErrors }) {
	const all = Object.entries(errors)
	if (all.length === 0) return null
	return (
		<section className="said wrong mt-6" role="alert" tabIndex={-1} aria-labelledby="error-summary">
			<h2 id="error-summary" className="text-lg">
				{all.length === 1 ? 'One thing needs another look' : `${all.length} things need another look`}
			</h2>
			<ul className="mt-2">
				{all.map(([name, says]) => (
					<li key={name}>
						<a href={`#${name}`}>{says}</a>
					</li>
				))}
			</ul>
		</section>
	)
}
