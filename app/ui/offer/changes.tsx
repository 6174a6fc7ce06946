import type { Change } from '@/lib/proposal/offer/changes'
import { ChangeList } from './change-list'

type Props = { readonly changes: readonly Change[]; readonly number: number }

/** What changed since the revision before, each field in words and in marks. */
export function Changes({ changes, number }: Props) {
	if (changes.length === 0) return null
	return (
		<section className="mt-10" aria-labelledby="changes">
			<h2 id="changes" className="text-2xl">
				What changed since revision {number - 1}
			</h2>
			<p className="mt-1 text-soft">This is revision {number}.</p>
			<ChangeList changes={changes} />
		</section>
	)
}
