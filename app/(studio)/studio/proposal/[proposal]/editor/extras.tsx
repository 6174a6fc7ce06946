'use client'
import { swapped } from '@/lib/proposal/desk/swapped'
import { Box, Does, Pick } from './box'
import { boxAt, type Extra, freshKey, type Known, type Part, replaced } from './known'
import type { FindOthers } from './option/another'
import { Lines } from './option/lines'
import { WithPutBack } from './removal/put-back'
import { useRemoval } from './removal/use-removal'

type Own = { readonly known: Known; readonly findOthers: FindOthers }
type Props = Part<readonly Extra[]> & Own

/** Things that the client may add, each priced by what it takes. */
export function Extras({ value, onChange, errors, path, known, findOthers }: Props) {
	const [place] = known.places
	const { takeOut, goTo } = useRemoval()
	const add = () => {
		if (place === undefined) return
		onChange([...value, { key: freshKey(value), name: '', words: '', place: place.id, minutes: '0', lines: [] }])
		goTo(`${path}.${value.length}.name`)
	}
	return (
		<fieldset className="mt-8 border-t-2 border-ink pt-3">
			<legend className="sr-only">Extras</legend>
			<h2 className="text-lg">Extras</h2>
			<WithPutBack list="extras" as="div">
				{value.map((extra, index) => (
					<ExtraFields
						key={extra.key}
						value={extra}
						onChange={(next) => onChange(replaced(value, index, next))}
						onRemove={() => takeOut({ is: 'extra', extra: extra.key })}
						errors={errors}
						path={`${path}.${index}`}
						known={known}
						findOthers={findOthers}
					/>
				))}
			</WithPutBack>
			<Does onClick={add}>Add an extra</Does>
		</fieldset>
	)
}

function ExtraFields({
	value,
	onChange,
	onRemove,
	errors,
	path,
	known,
	findOthers,
}: Part<Extra> & Own & { readonly onRemove: () => void }) {
	const change = (next: Partial<Extra>) => onChange({ ...value, ...next })
	const called = value.name || 'extra'
	return (
		<div className="mt-3">
			<div className="grid items-end gap-x-3 gap-y-1 sm:grid-cols-[1fr_2fr_9rem_6rem_auto]">
				<Box
					label="Name of the extra"
					value={value.name}
					onChange={(name) => change({ name })}
					{...boxAt(errors, `${path}.name`)}
				/>
				<Box
					label="In words for the client"
					value={value.words}
					onChange={(words) => change({ words })}
					{...boxAt(errors, `${path}.words`)}
				/>
				<Pick
					label="Place"
					value={value.place}
					onChange={(place) => change({ place })}
					{...boxAt(errors, `${path}.place`)}
				>
					{known.places.map(({ id, name }) => (
						<option key={id} value={id}>
							{name}
						</option>
					))}
				</Pick>
				<Box
					label="Minutes"
					inputMode="decimal"
					className="text-end"
					value={value.minutes}
					onChange={(minutes) => change({ minutes })}
					{...boxAt(errors, `${path}.minutes`)}
				/>
				<p>
					<Does onClick={onRemove}>
						Remove<span className="sr-only"> {called}</span>
					</Does>
				</p>
			</div>
			<Lines
				value={value.lines}
				onChange={(lines) => change({ lines: [...lines] })}
				errors={errors}
				path={`${path}.lines`}
				known={known}
				of={called}
				where={{ extra: value.key }}
				addAt={`${path}.lines`}
				findOthers={(material) => findOthers(material, null)}
				onSwap={(from, to) => change({ lines: swapped(value.lines, from, to) })}
			/>
		</div>
	)
}
