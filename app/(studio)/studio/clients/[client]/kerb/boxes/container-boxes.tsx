import { TextField } from '@/app/ui/field'
import { lights, limits, shapes, stands, walls, waterers } from '@/lib/container/card'
import type { LengthUnit } from '@/lib/format/length'
import type { FieldErrors } from '@/lib/forms/read'
import type { Box } from '../../container/labels'
import { kerbLabels } from './labels'
import { MeasureBoxes } from './measure-boxes'
import { Pick, TickPick } from './pick'
import { ShapePicture } from './shape-picture'

type Boxes = Readonly<Record<string, string>>
type Props = {
	readonly number: number
	/** Its place in the row, from one. */
	readonly nth: number
	readonly first: Boxes
	readonly now: Boxes
	readonly errors: FieldErrors
	readonly unit: LengthUnit
	readonly isAlive: boolean
	readonly onRemove: (() => void) | null
}

const plain = (values: readonly string[]) => values.map((value) => ({ value, label: value }))
const byPicture = shapes.map((value) => ({ value, label: value, picture: <ShapePicture shape={value} /> }))

const near = [
	['outletNear', 'an outlet'],
	['hoseNear', 'a hose'],
] as const
const around = [
	['isWindy', 'stands in the wind'],
	['isUnderEave', 'under an eave'],
	['hasRoadSalt', 'gets road salt'],
	['hasDrainHole', 'has a drain hole'],
	['hasLiner', 'has a liner'],
] as const

/** Chosen beforehand, since most are so. */
const usual: Boxes = {
	stands: 'against a wall',
	waterer: 'client',
	limitedWeight: 'none',
	owner: 'client',
	hasDrainHole: 'on',
	colour: '#3a3d40',
}
const folded = [
	['stands', stands, 3],
	['waterer', waterers, 3],
	['limitedWeight', limits, 3],
	['owner', ['client', 'studio'], 2],
] as const

/** One container: its shape by picture, its measures, and what is around it. */
export function ContainerBoxes({ number, nth, first: filled, now, errors, unit, isAlive, onRemove }: Props) {
	const first = Object.keys(filled).length === 0 ? usual : filled
	const called = (box: string) => `container.${number}.${box}`
	const pick = (box: Box, choices: Parameters<typeof Pick>[0]['choices'], across: 2 | 3 | 4) => (
		<Pick
			key={box}
			name={called(box)}
			legend={kerbLabels[box]}
			choices={choices}
			chosen={first[box] ?? ''}
			error={errors[called(box)]}
			across={across}
		/>
	)
	const ticks = (legend: string, entries: readonly (readonly [box: string, label: string])[]) => (
		<fieldset className="mt-5">
			<legend className="font-semibold">{legend}</legend>
			<div className="mt-1.5 grid grid-cols-2 gap-2">
				{entries.map(([box, label]) => (
					<TickPick key={box} name={called(box)} label={label} isTicked={first[box] === 'on'} />
				))}
			</div>
		</fieldset>
	)
	return (
		<section className="vessel mt-10 border-t-2 border-ink pt-2" aria-labelledby={`heading-${number}`}>
			<div className="flex items-baseline justify-between gap-4">
				<h2 id={`heading-${number}`} tabIndex={-1} className="text-2xl">
					Container {nth}
				</h2>
				{onRemove && (
					<button type="button" className="does" onClick={onRemove}>
						Take it out<span className="sr-only">: container {nth}</span>
					</button>
				)}
			</div>
			<TextField
				name={called('name')}
				label={kerbLabels.name}
				list="spots"
				value={first.name ?? ''}
				error={errors[called('name')]}
			/>
			{pick('shape', byPicture, 4)}
			<MeasureBoxes number={number} first={first} now={now} errors={errors} unit={unit} isAlive={isAlive} />
			{pick('wall', plain(walls), 3)}
			{pick('light', plain(lights), 3)}
			{ticks('Near it', near)}
			<details
				className="mt-5"
				open={[...folded.map(([box]) => box), 'walkLeftCm', 'colour'].some((box) => called(box) in errors)}
			>
				<summary className="act w-full">More of its card</summary>
				{folded.map(([box, values, across]) => pick(box, plain(values), across))}
				{ticks('Around it', around)}
				<p className="mt-4 text-sm text-soft">
					On a deck, balcony, roof, bracket or railing a licensed engineer says what it may carry, full and wet. How
					much of the walk has to stay clear, the local authority says.
				</p>
				<div className="grid grid-cols-2 items-end gap-x-3">
					<TextField
						name={called('walkLeftCm')}
						label={kerbLabels.walkLeftCm}
						inputMode="decimal"
						value={first.walkLeftCm ?? ''}
						error={errors[called('walkLeftCm')]}
					/>
					<TextField
						name={called('colour')}
						label={kerbLabels.colour}
						type="color"
						value={first.colour ?? ''}
						error={errors[called('colour')]}
					/>
				</div>
			</details>
		</section>
	)
}
