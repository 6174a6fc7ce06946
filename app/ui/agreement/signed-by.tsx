import type { SignedBy as Signature } from '@/lib/agreement/signing/page'
import { momentWords } from '@/lib/format/moment'

type Props = {
	readonly signatures: readonly Signature[]
	readonly client: string
	readonly timeZone: string
	readonly hash: string
	readonly hasPaper: boolean
}

/** Who has signed for either side, and by what the text is known. */
export function SignedBy({ signatures, client, timeZone, hash, hasPaper }: Props) {
	return (
		<section className="mt-12" aria-labelledby="signatures">
			<h2 id="signatures" className="text-2xl">
				Signatures
			</h2>
			<ul className="mt-3 border-t-2 border-ink">
				{(['studio', 'client'] as const).map((side) => {
					const given = signatures.find((each) => each.side === side)
					return (
						<li key={side} className="border-b border-line py-3 text-lg">
							<b className="font-semibold">{side === 'studio' ? 'For the studio' : `For ${client}`}:</b>{' '}
							{given === undefined
								? 'not signed yet'
								: `${given.name ?? 'erased'}, ${momentWords(given.at, timeZone)}${given.isOnPaper ? ', on paper' : ''}`}
						</li>
					)
				})}
			</ul>
			<p className="mt-3 text-sm wrap-anywhere text-soft">
				Both sides sign exactly this text, known by its SHA-256: <code>{hash}</code>
			</p>
			{hasPaper && (
				<p className="mt-2">
					<a className="inline-flex min-h-11 items-center" href="/verify">
						Check whether a file is the one that was signed
					</a>
				</p>
			)}
		</section>
	)
}
