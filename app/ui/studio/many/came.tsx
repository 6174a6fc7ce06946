import { numberWord } from '@/lib/format/words'

type Props = {
	/** What was done, in a word: published, issued. */
	readonly done: string
	readonly went: readonly string[]
	readonly not: readonly string[]
}

/** What came of doing it for many: who is out, and who is not and why. */
export function Came({ done, went, not }: Props) {
	if (went.length + not.length === 0) return null
	const out = went.length === 0 ? `None was ${done}` : `${numberWord(went.length)} ${done}`
	const rest = went.length > 0 && not.length > 0 ? `, ${numberWord(not.length).toLowerCase()} not` : ''
	return (
		<section className={`said mt-5 ${not.length > 0 ? 'wrong' : ''}`} aria-labelledby="came">
			<h2 id="came" className="text-lg">
				{`${out}${rest}`}
			</h2>
			{went.length > 0 && <p className="mt-1">Out, with a mail on its way: {went.join(', ')}.</p>}
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
