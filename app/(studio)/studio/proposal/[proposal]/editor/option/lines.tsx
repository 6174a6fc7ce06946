'use client'
import type { LinesOf } from '@/lib/proposal/desk/removed/removed'
import { listOf } from '@/lib/proposal/desk/removed/told'
import { usualHolding } from '@/lib/recipe/library/usual'
import { holdingSchema, roleSchema, roles } from '@/lib/recipe/material'
import { Box, Does, Pick } from '../box'
import { boxAt, byHand, type Known, type Line, type Part, replaced } from '../known'
import { WithPutBack } from '../removal/put-back'
import { useRemoval } from '../removal/use-removal'
import { Another, type Swapping } from './another'

type Props = Part<readonly Line[]> &
	Swapping & {
		readonly known: Known
		readonly of: string
		/** Where they stand in the draft. */
		readonly where: LinesOf
		/** The path at which an empty list is met. */
		readonly addAt: string
		/** Puts the same into the other containers; null where there are none. */
		readonly onSpread?: (() => void) | null
	}

const holdingWords = { sold: 'sold', lent: 'lent', own: 'client’s own' } as const

/** What goes in, line by line: material, count, whose it is. */
export function Lines({ value, onChange, errors, path, known, of, where, addAt, onSpread = null, ...swapping }: Props) {
	const { takeOut, goTo } = useRemoval()
	const [first] = known.materials
	const add = () => {
		if (first === undefined) return
		const { id: material, role, kind } = first
		onChange([...value, { material, role, holding: usualHolding(kind), count: '1', ...byHand }])
		goTo(`${path}.${value.length}.material`)
	}
	return (
		<div>
			<ul>
				<WithPutBack list={listOf(where)} as="li">
					{Object.entries(value).map(([at, line]) => (
						<LineRow
							key={at}
							value={line}
							onChange={(next) => onChange(replaced(value, Number(at), next))}
							onRemove={() => takeOut({ is: 'line', of: where, at: Number(at) })}
							errors={errors}
							path={`${path}.${at}`}
							known={known}
							of={`${of}, line ${Number(at) + 1}`}
							{...swapping}
						/>
					))}
				</WithPutBack>
			</ul>
			<p className="flex flex-wrap gap-x-6">
				<Does at={addAt} onClick={add}>
					Add a line<span className="sr-only"> to {of}</span>
				</Does>
				{onSpread && value.length > 0 && <Does onClick={onSpread}>Put the same into the others</Does>}
			</p>
		</div>
	)
}

type RowProps = Part<Line> & Swapping & { readonly known: Known; readonly of: string; readonly onRemove: () => void }

function LineRow({ value, onChange, onRemove, errors, path, known, of, ...swapping }: RowProps) {
	const material = known.materials.find(({ id }) => id === value.material)
	const choose = (id: string) => {
		const next = known.materials.find((each) => each.id === id)
		if (next !== undefined) onChange({ ...value, material: id, role: next.role, holding: usualHolding(next.kind) })
	}
	return (
		<li className="grid grid-cols-[1fr_4.5rem_3.75rem] items-start gap-x-2 gap-y-1 border-t border-line py-1 sm:grid-cols-[1fr_4.5rem_4.5rem_7rem_7rem_auto]">
			<Pick
				hidden
				label={`Material, ${of}`}
				value={value.material}
				onChange={choose}
				{...boxAt(errors, `${path}.material`)}
			>
				{roles.map((role) => (
					<optgroup key={role} label={role}>
						{known.materials
							.filter((each) => each.role === role)
							.map(({ id, name }) => (
								<option key={id} value={id}>
									{name}
								</option>
							))}
					</optgroup>
				))}
			</Pick>
			<Box
				hidden
				label={`Count, ${of}`}
				inputMode="decimal"
				className="text-end"
				value={value.count}
				onChange={(count) => onChange({ ...value, count, isKept: value.grows !== null })}
				{...boxAt(errors, `${path}.count`)}
			/>
			<span className="self-center text-sm text-soft">
				{material?.unit}
				{value.grows !== null && (
					<Kept isKept={value.isKept} of={of} onChange={(isKept) => onChange({ ...value, isKept })} />
				)}
			</span>
			<div className="col-span-3 flex items-start gap-x-2 sm:contents">
				<Pick
					hidden
					label={`Role, ${of}`}
					value={value.role}
					onChange={(role) => onChange({ ...value, role: roleSchema.parse(role) })}
				>
					{roles.map((role) => (
						<option key={role}>{role}</option>
					))}
				</Pick>
				<Pick
					hidden
					label={`Whose it is, ${of}`}
					value={value.holding}
					onChange={(holding) => onChange({ ...value, holding: holdingSchema.parse(holding) })}
					{...boxAt(errors, `${path}.holding`)}
				>
					{holdingSchema.options.map((holding) => (
						<option key={holding} value={holding}>
							{holdingWords[holding]}
						</option>
					))}
				</Pick>
				<span className="ms-auto flex items-start gap-x-3 whitespace-nowrap sm:ms-0 sm:gap-x-4">
					{material && <Another material={material} of={of} {...swapping} />}
					<Does onClick={onRemove}>
						Remove
						<span className="sr-only">
							{' '}
							{material?.name ?? 'the line'}, {of}
						</span>
					</Does>
				</span>
			</div>
		</li>
	)
}

/** A grown count follows the container; one that was changed by hand is kept until it is let go. */
function Kept({
	isKept,
	of,
	onChange,
}: {
	readonly isKept: boolean
	readonly of: string
	readonly onChange: (next: boolean) => void
}) {
	return (
		<label className="flex items-center gap-1 text-xs">
			<input
				type="checkbox"
				className="tick small"
				checked={isKept}
				aria-label={`Keep this count, ${of}`}
				onChange={(event) => onChange(event.target.checked)}
			/>
			keep
		</label>
	)
}
