import type { Metadata } from 'next'
import { agreementAt } from '@/app/server/answers/agreement/agreement-page'
import { first, isOpened } from '@/app/server/pages'
import { stamp } from '@/app/server/start/clock'
import { Clauses } from '@/app/ui/agreement/clauses'
import { Rows } from '@/app/ui/agreement/rows'
import { SignedBy } from '@/app/ui/agreement/signed-by'
import { ClientFrame } from '@/app/ui/client-frame'
import { ChangeList } from '@/app/ui/offer/change-list'
import { Told } from '@/app/ui/told'
import { markOpened } from '@/db/agreements/signing/open'
import { instalmentRows, summary } from '@/lib/agreement/document/summary'
import { Acts } from './acts'
import { SignedBefore } from './signed-before'
import { Refused, Stands } from './told'

export const metadata: Metadata = { title: 'Your agreement' }

/** The whole text by sections, what it includes and how it stands; opening it is noted, and nothing has to be scrolled to go on. */
export default async function Agreement({ params, searchParams }: PageProps<'/agreement/[agreement]'>) {
	const query = await searchParams
	const { who, me, id, path, page } = await agreementAt((await params).agreement, '', query)
	const { document, changes, state, maySign } = page
	if (document === undefined) return <Told title="Erased" says="What stood here has been erased at your request." />
	if (await isOpened()) await markOpened(who, { agreement: id, as: 'page' }, stamp())
	const instalments = instalmentRows(document)
	const isWaiting = state.is === 'to be signed'
	const pdf = document.money === null ? 'none' : page.hasPaper ? 'signed' : isWaiting ? 'to read' : 'none'
	const acts = <Acts path={path} hash={page.hash} maySign={maySign && isWaiting} pdf={pdf} />
	return (
		<ClientFrame studio={document.studio.name} who={me}>
			<article className="mx-auto max-w-3xl px-5 pt-[5vh]">
				<p className="text-lg">{document.client.name}</p>
				<h1 className="mt-1 text-5xl tracking-tight">Our agreement</h1>
				<Refused told={first(query.told)} />
				<Stands page={page} />
				{acts}
				{changes.length > 0 && (
					<section className="mt-12" aria-labelledby="changes">
						<h2 id="changes" className="text-2xl">
							What is different
						</h2>
						<p className="mt-1 text-soft">From the agreement before; this is number {document.number}.</p>
						<ChangeList changes={changes} />
					</section>
				)}
				<section className="mt-12" aria-labelledby="includes">
					<h2 id="includes" className="text-2xl">
						What it includes
					</h2>
					<Rows rows={summary(document)} />
				</section>
				{instalments.length > 0 && (
					<section className="mt-12" aria-labelledby="instalments">
						<h2 id="instalments" className="text-2xl">
							Instalments
						</h2>
						<p className="mt-1 text-soft">Tax is added to each.</p>
						<Rows rows={instalments} />
					</section>
				)}
				<Clauses clauses={document.clauses} leftOut={document.leftOut} />
				<SignedBy
					signatures={page.signatures}
					client={document.client.name}
					timeZone={page.timeZone}
					hash={page.hash}
					hasPaper={page.hasPaper && document.money !== null}
				/>
				{page.signedBefore.length > 0 && <SignedBefore path={path} documents={page.signedBefore} />}
				{acts}
			</article>
		</ClientFrame>
	)
}
