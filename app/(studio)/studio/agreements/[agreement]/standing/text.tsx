import type { OnDesk } from '@/lib/agreement/studio/shown'

/** The whole text as it would be issued; what is still open stands in braces. */
export function Text({ clauses, isOpen }: { readonly clauses: OnDesk['clauses']; readonly isOpen: boolean }) {
	return (
		<details className="mt-10 max-w-3xl border-t border-line pt-4" open={isOpen}>
			<summary className="min-h-11 cursor-pointer py-2 text-xl font-bold">The text as it would be issued</summary>
			{clauses.map(({ key, title, text }) => (
				<section key={key} className="mt-5">
					<h3 className="text-base">{title}</h3>
					<p className="mt-1 whitespace-pre-line wrap-anywhere">{text}</p>
				</section>
			))}
		</details>
	)
}
