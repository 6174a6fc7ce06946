import type { Metadata } from 'next'
import { first, signedIn } from '@/app/server/pages'
import { HashOfFile } from '@/app/ui/agreement/hash-of-file'
import { WordsField } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { knownPapers } from '@/db/agreements/papers/known'
import { studioName } from '@/db/studio/studio'
import type { Viewer } from '@/lib/access/viewer'
import { compared } from '@/lib/agreement/verify/compared'
import { pastedHash } from '@/lib/agreement/verify/pasted-hash'
import { proves, provesNot } from '@/lib/agreement/verify/proves'
import { comparedInWords } from '@/lib/agreement/verify/told'

export const metadata: Metadata = { title: 'Check a file' }

async function Said({ who, typed }: { readonly who: Viewer; readonly typed: string }) {
	const hash = pastedHash(typed)
	const { timeZone, papers } = hash === null ? { timeZone: 'UTC', papers: [] } : await knownPapers(who, hash)
	const said = comparedInWords(compared(typed, papers), timeZone)
	return (
		<section className={`said mt-6 ${papers.length > 0 ? '' : 'wrong'}`} aria-labelledby="said">
			<h2 id="said" className="text-2xl">
				{said.title}
			</h2>
			{[said.says, said.proves, said.provesNot]
				.filter((words) => words !== '')
				.map((words) => (
					<p key={words} className="mt-2 wrap-anywhere">
						{words}
					</p>
				))}
		</section>
	)
}

const Points = ({ title, points }: { readonly title: string; readonly points: readonly string[] }) => (
	<>
		<h2 className="mt-10 text-2xl">{title}</h2>
		<ul className="mt-2">
			{points.map((each) => (
				<li key={each} className="mt-2">
					{each}
				</li>
			))}
		</ul>
	</>
)

/** Compares a file with the record, by its hash alone; what that shows, and what not. */
export default async function Verify({ searchParams }: PageProps<'/verify'>) {
	const who = await signedIn('/verify')
	const typed = (first((await searchParams).hash) ?? '').slice(0, 500)
	return (
		<PublicFrame studio={(await studioName(who)) ?? 'Doorsill'}>
			<h1 className="text-4xl">Is this the file that was signed?</h1>
			<p className="mt-3 text-lg">We compare its SHA-256 with our record.</p>
			{typed !== '' && <Said who={who} typed={typed} />}
			<form method="get" action="/verify">
				<HashOfFile into="hash" />
				<WordsField name="hash" label="Its SHA-256" rows={3} value={typed} />
				<button type="submit" className="act first mt-6">
					Compare
				</button>
			</form>
			<Points title="What a sealed file shows" points={proves} />
			<Points title="What it does not" points={provesNot} />
		</PublicFrame>
	)
}
