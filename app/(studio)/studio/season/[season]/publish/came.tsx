import { numberWord } from '@/lib/format/words'

type Props = { readonly published: readonly string[]; readonly not: readonly string[] }

/** What came of publishing: who is out, and who is not and why. */
export function Came({ published, not }: Props) {
	if (published.length + not.length === 0) return null
	const out = published.length === 0 ? 'None was published' : `${numberWord(published.length)} published`
	const rest = published.length > 0 && not.length > 0 ? `, ${numberWord(not.length).toLowerCase()} not` : ''
	return (
		<section className={`said mt-5 ${not.length > 0 ? 'wrong' : ''}`} aria-labelledby="came">
			<h2 id="came" className="text-lg">
				{`${out}${rest}`}
			</h2>
			{published.length > 0 && <p className="mt-1">Out, with a mail on its way: {published.join(', ')}.</p>}
			{not.length > 0 && (
				<ul className="mt-2">
					{not.map((says) => (
						<li key={says}>{says}</li>
					))}
				</ul>
			)}
		</section>
	)
}
