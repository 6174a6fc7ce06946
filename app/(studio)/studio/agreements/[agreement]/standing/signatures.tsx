import type { Signature } from '@/lib/agreement/signing/signature'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import { fullDay } from '@/lib/format/day'
import { momentWords } from '@/lib/format/moment'
import type { Moment } from '@/lib/units/day'

type Shown = (at: Moment) => string

function words(signature: Signature, at: string): string {
	switch (signature.is) {
		case 'by the studio':
			return `For the studio: ${signature.name}, given by issuing it, ${at}`
		case 'on a screen':
			return `${signature.typedName}, on a screen, ${at}; address proven by ${signature.proven.by}`
		case 'on paper':
			return `${signature.signer}, on paper, ${fullDay(signature.signedOn)}; written down by the studio, ${at}`
		default:
			return signature satisfies never
	}
}

/** Who signed what was issued last, and who opened it when. */
export function Signatures({ desk: { row, signatures, openings, timeZone } }: { readonly desk: OnDesk }) {
	const shown: Shown = (at) => momentWords(at, timeZone)
	if (row.issued === null) return null
	return (
		<section className="mt-8 max-w-3xl" aria-labelledby="signatures">
			<h2 id="signatures" className="text-xl">
				Signed and opened
			</h2>
			<ul className="mt-2 border-t border-line *:border-b *:border-line *:py-2">
				{signatures.map(({ at, signature }) => (
					<li key={at} className="wrap-anywhere">
						{signature === undefined
							? `A signature whose words were erased, ${shown(at)}`
							: words(signature, shown(at))}
						{signature?.is === 'on paper' && (
							<>
								{' · '}
								<a href={`/studio/agreements/${row.id}/scan/${row.issued}`}>the picture of it</a>
							</>
						)}
					</li>
				))}
				{openings.map(({ name, as, at }) => (
					<li key={`${name} ${as}`} className="wrap-anywhere text-soft">
						{name} opened it as {as === 'page' ? 'a page' : 'a PDF'}, {shown(at)}
					</li>
				))}
				{signatures.length < 2 && openings.length === 0 && <li className="text-soft">Nobody has opened it yet.</li>}
			</ul>
		</section>
	)
}
