import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { approvalOf } from '@/app/server/answers/approval'
import { idIn, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { Notes } from '@/app/ui/offer/notes'
import { Price } from '@/app/ui/offer/price'
import { type GivenAnswer, readOffer } from '@/db/proposals/read-offer'
import { whoIs } from '@/db/studio/studio'
import { daySpan } from '@/lib/format/day'
import { answerHolds } from '@/lib/proposal/offer/answer-holds'
import type { Offer } from '@/lib/proposal/offer/offer'
import { receipt } from '@/lib/proposal/offer/receipt'
import { Rows } from '../approve/rows'

export const metadata: Metadata = { title: 'Thank you' }

const titles: Record<GivenAnswer['kind'], string> = {
	approval: 'Approved. Thank you.',
	'change asked for': 'We have your wishes.',
	skip: 'Skipped for this season.',
}

function next(kind: GivenAnswer['kind'], { window }: Offer): readonly string[] {
	if (kind === 'change asked for')
		return ['We revise the design and write to you when the new revision is there to look at.']
	if (kind === 'skip') return ['Nothing goes in and nothing is due. You hear from us for the next season.']
	return [
		'A receipt is on its way to you by mail.',
		`We order now. Your containers are filled ${daySpan(window.from, window.to)}; we write before we come.`,
	]
}

/** What was answered and what happens next; opened again it stays true, or leads to how the proposal stands. */
export default async function Done({ params }: PageProps<'/proposal/[proposal]/done'>) {
	const { proposal: text } = await params
	const who = await signedIn(`/proposal/${text}/done`)
	const page = await readOffer(who, idIn<'proposal'>(text), stamp())
	if (page === undefined) hide(who)
	const { answer, offer } = page
	if (answer === undefined || offer === undefined || !answerHolds(answer.kind, page.state.is))
		redirect(`/proposal/${text}`)
	const record = receipt(offer, approvalOf(answer, page.timeZone))
	return (
		<ClientFrame studio={offer.studio} who={await whoIs(who)} season={offer.season}>
			<div className="mx-auto max-w-2xl px-5 pt-[10vh]">
				<h1 className="text-5xl tracking-tight">{titles[answer.kind]}</h1>
				{record ? (
					<Rows rows={record.rows} />
				) : (
					<p className="mt-5 text-xl">
						Reference <b>{answer.reference}</b>
					</p>
				)}
				<Price price={record?.price} />
				<Notes notes={answer.words?.notes ?? []} word={answer.word} />
				<h2 className="mt-10 text-2xl">What happens next</h2>
				<ul className="mt-2 text-lg">
					{next(answer.kind, offer).map((words) => (
						<li key={words} className="mt-2">
							{words}
						</li>
					))}
				</ul>
				<p className="mt-10 flex flex-wrap gap-4">
					{answer.kind === 'approval' && (
						<a className="act" href={`/proposal/${text}/pdf`}>
							Take it as a PDF
						</a>
					)}
					<a className="act" href={`/proposal/${text}`}>
						Back to the design
					</a>
				</p>
			</div>
		</ClientFrame>
	)
}
