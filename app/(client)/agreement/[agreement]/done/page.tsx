import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { agreementAt } from '@/app/server/answers/agreement/agreement-page'
import { Rows } from '@/app/ui/agreement/rows'
import { ClientFrame } from '@/app/ui/client-frame'
import type { AgreementPage } from '@/lib/agreement/signing/page'
import { fullDay } from '@/lib/format/day'
import { momentWords } from '@/lib/format/moment'
import type { Day } from '@/lib/units/day'

export const metadata: Metadata = { title: 'Thank you' }

const next = (from: Day) => [
	'A mail with the same facts is on its way to you and to us: keep it.',
	`It holds from ${fullDay(from)}. We write before each visit.`,
]

function rowsOf({ number, hash, signatures, timeZone }: AgreementPage) {
	const of = (side: 'client' | 'studio') => signatures.find((each) => each.side === side)
	const said = (given: ReturnType<typeof of>) =>
		given === undefined ? 'not signed' : `${given.name ?? 'erased'}, ${momentWords(given.at, timeZone)}`
	return [
		{ label: 'Number', value: String(number) },
		{ label: 'For you', value: said(of('client')) },
		{ label: 'For the studio', value: said(of('studio')) },
		{ label: 'The text’s SHA-256', value: hash },
	]
}

/** What was done and what happens next; opened again it stays true, or leads to how the agreement stands. */
export default async function Done({ params }: PageProps<'/agreement/[agreement]/done'>) {
	const { me, path, page } = await agreementAt((await params).agreement, '/done')
	const { document, state } = page
	if (document === undefined || (state.is !== 'signed' && state.is !== 'declined')) redirect(path)
	return (
		<ClientFrame studio={document.studio.name} who={me} home={`/home/${page.client}`}>
			<div className="mx-auto max-w-2xl px-5 pt-[10vh]">
				{state.is === 'signed' ? (
					<>
						<h1 className="text-5xl tracking-tight">Signed. Thank you.</h1>
						<Rows rows={rowsOf(page)} />
						<h2 className="mt-10 text-2xl">What happens next</h2>
						<ul className="mt-2 text-lg">
							{next(document.from).map((words) => (
								<li key={words} className="mt-2">
									{words}
								</li>
							))}
						</ul>
					</>
				) : (
					<>
						<h1 className="text-5xl tracking-tight">Declined.</h1>
						<p className="mt-4 text-lg">
							We have your reason and write to you. {state.inForce === null ? '' : 'The one before goes on to hold.'}
						</p>
					</>
				)}
				<p className="mt-10 flex flex-wrap gap-4">
					{state.is === 'signed' && document.money !== null && (
						<a className="act first" href={`${path}/pdf`}>
							The signed PDF
						</a>
					)}
					<a className="act" href={path}>
						Back to the agreement
					</a>
				</p>
			</div>
		</ClientFrame>
	)
}
