import type { Metadata } from 'next'
import { first } from '@/app/server/pages'
import { viewer } from '@/app/server/sign-in/session'
import { HashOfFile } from '@/app/ui/agreement/hash-of-file'
import { WordsField } from '@/app/ui/field'
import { PublicFrame } from '@/app/ui/public-frame'
import { type KnownPaper, knownPaper } from '@/db/agreements/papers/known'
import { studioName } from '@/db/studio/studio'
import { pastedHash } from '@/lib/agreement/verify/pasted-hash'
import { proves, provesNot } from '@/lib/agreement/verify/proves'
import { momentWords } from '@/lib/format/moment'

export const metadata: Metadata = { title: 'Check a file' }

const what = 'That is no SHA-256: it has 64 figures from 0 to 9 and letters from a to f.'

function Said({ known, studio }: { readonly known: KnownPaper | undefined; readonly studio: string }) {
	if (known === undefined)
		return (
			<p className="said wrong mt-6 text-lg" role="alert">
				No file that {studio} keeps has this hash. It is another file, or it was altered. A copy to read before signing
				is not kept.
			</p>
		)
	return (
		<p className="said mt-6 text-lg" role="status">
			It is byte for byte the signed agreement that {studio} kept on {momentWords(known.at, known.timeZone)},{' '}
			{known.bytes.toLocaleString('en-US')} bytes.
		</p>
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
	const typed = first((await searchParams).hash) ?? ''
	const who = await viewer()
	const studio = (await studioName(who)) ?? 'Doorsill'
	const hash = pastedHash(typed.slice(0, 500))
	const error = typed !== '' && hash === null ? what : undefined
	return (
		<PublicFrame studio={studio}>
			<h1 className="text-4xl">Is this the file that was signed?</h1>
			<p className="mt-3 text-lg">We compare its SHA-256 with our record.</p>
			{hash !== null && <Said known={await knownPaper(who, hash)} studio={studio} />}
			<form method="get" action="/verify">
				<HashOfFile into="hash" />
				<WordsField name="hash" label="Its SHA-256" rows={2} value={typed.slice(0, 500)} error={error} />
				<button type="submit" className="act first mt-6">
					Compare
				</button>
			</form>
			<Points title="What it shows" points={proves} />
			<Points title="What it does not" points={provesNot} />
		</PublicFrame>
	)
}
