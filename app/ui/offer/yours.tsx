import { list } from '@/lib/format/words'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import type { Hash } from '@/lib/record/hash'
import { ChoiceForm } from './choice-form'
import type { Look } from './drawn'

type Props = {
	readonly view: OfferView
	readonly path: string
	readonly revision: Hash | undefined
	/** Kept as it is while something is ticked. */
	readonly look: Look
	readonly isOpen: boolean
}

/** Extras to add and containers to leave out: one form, whose answer is the page with the new total. */
export function Yours({ view, path, revision, look, isOpen }: Props) {
	const { extras, pots, onWall } = view
	const optional = pots.filter(({ mayLeaveOut }) => mayLeaveOut)
	if (!isOpen) return <Settled view={view} />
	return (
		<ChoiceForm action={path}>
			{onWall && <input type="hidden" name="option" value={onWall.key} />}
			{revision && <input type="hidden" name="revision" value={revision} />}
			{look.hour && <input type="hidden" name="hour" value={look.hour} />}
			{look.measure !== 'none' && <input type="hidden" name="measure" value="show" />}
			{extras.length > 0 && (
				<fieldset className="mt-14">
					<legend className="text-3xl font-bold tracking-tight">Extras, if you like</legend>
					{extras.map(({ key, name, words, price, isAdded }) => (
						<label key={key} className="mt-3 flex min-h-11 gap-4 border-t border-line pt-3">
							<input
								type="checkbox"
								className="tick mt-0.5 shrink-0"
								name="extra"
								value={key}
								defaultChecked={isAdded}
							/>
							<span className="grow">
								<b className="font-semibold">{name}</b>
								{words !== '' && <span className="block text-soft">{words}</span>}
							</span>
							<span className="font-semibold tabular-nums">{price}</span>
						</label>
					))}
				</fieldset>
			)}
			{optional.length > 0 && (
				<fieldset className="mt-10">
					<legend className="text-xl font-bold">Leave one out?</legend>
					{optional.map(({ id, name, isOut }) => (
						<label key={id} className="mt-2 flex min-h-11 items-center gap-4">
							<input type="checkbox" className="tick shrink-0" name="without" value={id} defaultChecked={isOut} />
							<span>Without “{name}”</span>
						</label>
					))}
				</fieldset>
			)}
		</ChoiceForm>
	)
}

/** What was added and left out, once nothing can be changed about it; nothing of what was not. */
function Settled({ view: { extras, pots } }: Pick<Props, 'view'>) {
	const added = extras.filter(({ isAdded }) => isAdded)
	const out = pots.filter(({ isOut }) => isOut).map(({ name }) => name)
	return (
		<>
			{added.length > 0 && (
				<section className="mt-14" aria-labelledby="extras">
					<h2 id="extras" className="text-3xl">
						Extras
					</h2>
					{added.map(({ key, name, words }) => (
						<p key={key} className="mt-3 border-t border-line pt-3">
							<b className="font-semibold">{name}</b>
							{words !== '' && <span className="block text-soft">{words}</span>}
						</p>
					))}
				</section>
			)}
			{out.length > 0 && <p className="mt-6">Left out: {list(out)}.</p>}
		</>
	)
}
