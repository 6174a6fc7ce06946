'use client'
import { useId, useRef, useState } from 'react'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import { Does } from '../box'

/** Asks what can stand in for a material; undefined where no answer came. */
export type FindOthers = (material: string, container: string | null) => Promise<readonly StandIn[] | undefined>
export type Where = 'here' | 'everywhere'
export type Swapping = {
	/** There are other containers that a material can be replaced in. */
	readonly isOneOfMany?: boolean
	readonly findOthers: (material: string) => Promise<readonly StandIn[] | undefined>
	readonly onSwap: (from: string, to: StandIn, where: Where) => void
}

type Props = Swapping & { readonly material: { readonly id: string; readonly name: string }; readonly of: string }
type Found = readonly StandIn[] | 'asking' | 'no answer'

/** What can stand in for a line's material, best first; the one that is chosen takes its place, here or in every container. */
export function Another({ material: { id, name }, of, isOneOfMany = false, findOthers, onSwap }: Props) {
	const dialog = useRef<HTMLDialogElement>(null)
	const title = useId()
	const [found, setFound] = useState<Found>('asking')
	const open = async () => {
		setFound('asking')
		dialog.current?.showModal()
		setFound((await findOthers(id)) ?? 'no answer')
	}
	const close = () => dialog.current?.close()
	const use = (to: StandIn, where: Where) => {
		close()
		onSwap(id, to, where)
	}
	return (
		<>
			<Does onClick={() => void open()}>
				Use another
				<span className="sr-only">
					{' '}
					for {name}, {of}
				</span>
			</Does>
			<dialog ref={dialog} aria-labelledby={title} className="sheet">
				<div className="flex items-baseline justify-between gap-6">
					<h2 id={title} className="text-xl">
						Instead of {name}
					</h2>
					<Does onClick={close}>Leave it</Does>
				</div>
				<p role="status" className="text-soft">
					{statusOf(found)}
				</p>
				{typeof found !== 'string' && <Ranked found={found} isOneOfMany={isOneOfMany} onUse={use} />}
			</dialog>
		</>
	)
}

function statusOf(found: Found): string {
	if (found === 'asking') return 'Looking…'
	if (found === 'no answer') return 'The server is out of reach, or something on the desk cannot be read yet.'
	if (found.length === 0) return 'Nothing of the same role can be had for this place.'
	return 'What is in storage comes first, then the nearest in colour and height. Counts stay.'
}

type RankedProps = {
	readonly found: readonly StandIn[]
	readonly isOneOfMany: boolean
	readonly onUse: (to: StandIn, where: Where) => void
}

function Ranked({ found, isOneOfMany, onUse }: RankedProps) {
	return (
		<ol className="mt-2">
			{found.map((each) => (
				<li key={each.id} className="grid grid-cols-[2.25rem_1fr] gap-x-3 border-t border-line py-2">
					<svg width="36" height="36" aria-hidden="true" className="mt-0.5">
						<rect width="36" height="36" fill={each.hex} />
					</svg>
					<div>
						<p>
							<span className="font-semibold">{each.name}</span> <span className="text-soft">{each.why}</span>
						</p>
						<p className="flex flex-wrap gap-x-5">
							<Does onClick={() => onUse(each, 'here')}>
								{isOneOfMany ? 'Use it in this pot' : 'Use it'}
								<span className="sr-only">: {each.name}</span>
							</Does>
							{isOneOfMany && (
								<Does onClick={() => onUse(each, 'everywhere')}>
									Use it in every pot<span className="sr-only">: {each.name}</span>
								</Does>
							)}
						</p>
					</div>
				</li>
			))}
		</ol>
	)
}
