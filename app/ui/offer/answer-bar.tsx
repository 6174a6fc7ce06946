import { numberWord } from '@/lib/format/words'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import type { Hash } from '@/lib/record/hash'
import { chosenQuery } from './chosen-query'

type Props = {
	readonly view: OfferView
	readonly path: string
	readonly revision: Hash | undefined
	readonly may: 'answer' | 'look' | 'preview'
}

/** The answer, within reach of a thumb. While no palette is picked it leads to the palettes. */
export function AnswerBar({ view, path, revision, may }: Props) {
	const { onWall, palette, options, price, goesIn } = view
	return (
		<section aria-label="Your answer" className="answer-bar no-print border-t border-edge bg-ground">
			<div className="mx-auto flex max-w-5xl flex-wrap items-center justify-between gap-x-6 gap-y-2 px-5 py-3 sm:px-8">
				<p className="leading-tight" aria-live="polite">
					<b className="block">{palette ?? `${numberWord(options.length)} palettes to choose from`}</b>
					<span className="text-sm text-soft tabular-nums">
						{price ? `${price.total} · ` : ''}goes in {goesIn}
					</span>
				</p>
				<div className="flex grow gap-3 sm:grow-0">
					<Acts
						onWall={onWall !== undefined}
						change={`${path}/change?${chosenQuery(view, revision)}`}
						path={path}
						may={may}
					/>
				</div>
			</div>
		</section>
	)
}

type ActsProps = { readonly onWall: boolean; readonly change: string } & Pick<Props, 'path' | 'may'>

function Acts({ onWall, change, path, may }: ActsProps) {
	if (may === 'look')
		return <p className="self-center text-sm">You may look. The answer comes from someone else at your place.</p>
	const isPreview = may === 'preview'
	return (
		<>
			{isPreview ? (
				<Rests>Ask for a change</Rests>
			) : (
				<a className="act flex-auto px-3 sm:flex-none" href={change}>
					Ask for a change
				</a>
			)}
			{!onWall && (
				<a className="act first flex-auto px-3 sm:flex-none" href="#palettes">
					Choose a palette
				</a>
			)}
			{onWall && isPreview && <Rests>Approve this design</Rests>}
			{onWall && !isPreview && (
				<button
					type="submit"
					form="choice"
					formAction={`${path}/approve`}
					className="act first flex-auto px-3 sm:flex-none"
				>
					Approve this design
				</button>
			)}
		</>
	)
}

/** What a client could press, in a preview: it rests. */
function Rests({ children }: { readonly children: string }) {
	return (
		<span className="act flex-auto px-3 sm:flex-none" aria-disabled="true">
			{children}
		</span>
	)
}
