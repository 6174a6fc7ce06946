'use client'
import { type ReactNode, useEffect, useRef, useState } from 'react'
import { limits } from '@/lib/container/card'
import { sketchOf } from '@/lib/container/measured/sketch'
import type { LengthUnit } from '@/lib/format/length'
import { readWeight } from '@/lib/format/read-weight'
import { formText } from '../form-text'
import { Facts } from './facts'
import { Faults } from './faults'
import { VesselDrawing } from './vessel-drawing'

/** The text of the card's boxes, by their names. */
export type CardText = Readonly<Record<string, string>>

type Props = {
	readonly typed: CardText
	readonly unit: LengthUnit
	/** What each box is called. */
	readonly labels: CardText
	readonly children: ReactNode
}

/** The measures, and beside them what they make; it follows what is typed anywhere in the form. */
export function MeasuredCard({ typed: kept, unit, labels, children }: Props) {
	const [typed, setTyped] = useState(kept)
	const here = useRef<HTMLDivElement>(null)
	useEffect(() => {
		const form = here.current?.closest('form')
		if (!form) return
		const follow = () => setTyped(formText(form))
		follow()
		form.addEventListener('input', follow)
		return () => form.removeEventListener('input', follow)
	}, [])
	const sketch = sketchOf(typed, unit)
	const limit = limits.find((each) => each === typed.limitedWeight) ?? 'none'
	return (
		<div ref={here} className="gap-x-12 lg:grid lg:grid-cols-[minmax(0,1fr)_23rem] lg:grid-rows-[auto_1fr]">
			<figure className="mt-5 max-w-sm lg:col-start-2 lg:row-start-1">
				<VesselDrawing sketch={sketch} unit={unit} colour={typed.colour} />
				<figcaption className="mt-2 text-sm text-soft">
					{sketch.isSound
						? 'Cut open from the front, and from above.'
						: 'From the front, and from above. Dashed until the measures are all there and right.'}
				</figcaption>
			</figure>
			<div className="lg:col-start-1 lg:row-span-2 lg:row-start-1">
				{children}
				<Faults faults={sketch.faults} labels={labels} className="stays-in-view mt-4" />
			</div>
			<div className="mt-4 max-w-sm lg:col-start-2 lg:row-start-2">
				<Facts sketch={sketch} unit={unit} vesselKg={readWeight(typed.vesselKg ?? '', unit)} limit={limit} />
			</div>
		</div>
	)
}
