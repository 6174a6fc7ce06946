import type { ShownDocument } from '@/lib/agreement/document/shown'

type Props = Pick<ShownDocument, 'clauses' | 'leftOut'>

/** A short list of what stands where, then the whole text, clause by clause. */
export function Clauses({ clauses, leftOut }: Props) {
	return (
		<>
			<h2 className="mt-12 text-2xl">The whole text</h2>
			<details className="no-print mt-2">
				<summary className="min-h-11 cursor-pointer py-2 font-semibold">What stands where</summary>
				<nav aria-label="The clauses">
					<ol className="gap-x-8 sm:columns-2">
						{clauses.map(({ key, title }, index) => (
							<li key={key}>
								<a className="inline-flex min-h-11 items-center" href={`#clause-${key}`}>
									{index + 1}. {title}
								</a>
							</li>
						))}
					</ol>
				</nav>
			</details>
			{clauses.map(({ key, title, text }, index) => (
				<section key={key} className="mt-8" aria-labelledby={`clause-${key}`}>
					<h3 id={`clause-${key}`} className="scroll-mt-6 text-xl">
						{index + 1}. {title}
					</h3>
					{text.split(/\n{2,}/).map((paragraph) => (
						<p key={paragraph} className="mt-2 text-lg whitespace-pre-line wrap-anywhere">
							{paragraph}
						</p>
					))}
				</section>
			))}
			{leftOut > 0 && (
				<p className="said mt-8">
					What names an amount is left out for you. Whoever may sign at your place reads all of it.
				</p>
			)}
		</>
	)
}
