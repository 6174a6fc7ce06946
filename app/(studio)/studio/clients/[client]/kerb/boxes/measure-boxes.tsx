import { useRef } from 'react'
import { TextField } from '@/app/ui/field'
import { sketchOf } from '@/lib/container/measured/sketch'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors } from '@/lib/forms/read'
import { Faults } from '../../container/drawing/faults'
import { VesselDrawing } from '../../container/drawing/vessel-drawing'
import { howToType, kerbLabels } from './labels'

type Props = {
	readonly number: number
	/** As the boxes stood at first, and as they stand now. */
	readonly first: Readonly<Record<string, string>>
	readonly now: Readonly<Record<string, string>>
	readonly errors: FieldErrors
	readonly unit: LengthUnit
	/** Whether scripts are there to press with. */
	readonly isAlive: boolean
}

const measures = [
	['topCm', ''],
	['topDepthCm', 'deep'],
	['bottomCm', ''],
	['bottomDepthCm', 'deep'],
	['heightCm', ''],
	['sillToGlassCm', 'sill'],
] as const
const quarters = [
	['¼', 'a quarter'],
	['½', 'a half'],
	['¾', 'three quarters'],
] as const

const withoutPart = (text: string) => text.replace(/\s*[¼½¾]$/, '')

/** The outer measures with their drawing; parts of an inch by a press, since a phone’s figures have none. */
export function MeasureBoxes({ number, first, now, errors, unit, isAlive }: Props) {
	const last = useRef<HTMLInputElement>(null)
	const sketch = sketchOf(now, unit)
	const add = (part: string) => {
		const box = last.current
		if (box === null) return
		box.value = withoutPart(box.value) + part
		box.dispatchEvent(new Event('input', { bubbles: true }))
		box.focus()
	}
	return (
		<fieldset
			className="mt-6"
			onFocus={({ target }) => {
				if (target instanceof HTMLInputElement) last.current = target
			}}
		>
			<legend className="font-semibold">Outer measures</legend>
			<p className="text-sm text-soft">{howToType[unit]}</p>
			<div className="mx-auto mt-3 max-w-64">
				<VesselDrawing sketch={sketch} unit={unit} colour={now.colour} />
			</div>
			<div className="grid grid-cols-2 items-end gap-x-3">
				{measures.map(([box, only]) => (
					<div key={box} className={only}>
						<TextField
							name={`container.${number}.${box}`}
							label={kerbLabels[box]}
							inputMode="decimal"
							value={first[box] ?? ''}
							error={errors[`container.${number}.${box}`]}
						/>
					</div>
				))}
			</div>
			{isAlive && unit === 'in' && (
				<div className="mt-3 grid grid-cols-3 gap-2">
					{quarters.map(([part, words]) => (
						<button
							key={part}
							type="button"
							className="act text-xl"
							aria-label={`Add ${words} to the measure`}
							onPointerDown={(event) => event.preventDefault()}
							onClick={() => add(part)}
						>
							{part}
						</button>
					))}
				</div>
			)}
			<Faults faults={sketch.faults} labels={kerbLabels} className="mt-3" />
		</fieldset>
	)
}
