import type { GivenAnswer } from '@/db/proposals/read-offer'
import { fullDay } from '@/lib/format/day'
import { dayOf } from '@/lib/units/day'

const heads: Record<GivenAnswer['kind'], string> = {
	approval: 'approved',
	'change asked for': 'asks for a change',
	skip: 'skips this season',
}

type Props = {
	readonly answer: GivenAnswer | undefined
	/** What was approved, in words. */
	readonly palette: string
	readonly timeZone: string
}

/** The client's answer to the revision that stands, in their words. */
export function Asked({ answer, palette, timeZone }: Props) {
	if (answer === undefined) return null
	const { kind, word, words, reference, at } = answer
	return (
		<section className="said mt-5" aria-label="Their answer">
			<p>
				<b>{(word === 'studio' ? words?.said : words?.name) ?? 'A contact'}</b> {heads[kind]}
				{kind === 'approval' && ` ${palette}`}
				{word === 'studio' && `, by phone, taken down by ${words?.name ?? 'the studio'}`},{' '}
				{fullDay(dayOf(at, timeZone))}, reference {reference}
				{words?.purchaseOrder && `, purchase order ${words.purchaseOrder}`}.
			</p>
			{words && words.notes.length > 0 && (
				<ul className="mt-2">
					{words.notes.map(({ about, words: said }) => (
						<li key={`${about} ${said}`} className="mt-1 whitespace-pre-line">
							<b className="font-semibold">{about === 'whole' ? 'In their words' : about}:</b> {said}
						</li>
					))}
				</ul>
			)}
		</section>
	)
}
