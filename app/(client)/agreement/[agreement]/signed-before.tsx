import type { AgreementPage } from '@/lib/agreement/signing/page'

type Props = { readonly path: string; readonly documents: AgreementPage['signedBefore'] }

/** What both have signed before this one, as it was sealed then: the last of them holds until this one is signed. */
export const SignedBefore = ({ path, documents }: Props) => (
	<section className="no-print mt-8" aria-labelledby="before">
		<h2 id="before" className="text-2xl">
			Signed before
		</h2>
		<ul className="mt-2">
			{documents.map(({ hash, number }) => (
				<li key={hash}>
					<a className="inline-flex min-h-11 items-center" href={`${path}/pdf?document=${hash}`}>
						The signed PDF of number {number}
					</a>
				</li>
			))}
		</ul>
	</section>
)
