'use client'
import type { DraftText } from '@/lib/forms/draft-form'
import { boxId, Tick } from './box'
import type { Known } from './known'
import { PutBack } from './removal/put-back'
import { useRemoval } from './removal/use-removal'

type Chosen = DraftText['containers']
type Props = {
	readonly value: Chosen
	readonly onChange: (next: Chosen) => void
	readonly known: Known
	/** Those that a fixed season price pays for; null without one. */
	readonly covered: readonly string[] | null
	readonly onCover: (next: string[]) => void
}

/** Which containers, place by place; each may be new this season, and may be left out by the client. */
export function Containers({ value, onChange, known, covered, onCover }: Props) {
	return (
		<fieldset className="mt-6">
			<legend id={boxId('containers')} tabIndex={-1} className="text-lg font-bold">
				Containers
			</legend>
			{known.places.map(({ id, name }) => (
				<div key={id} className="mt-2">
					<p className="text-sm text-soft">{name}</p>
					{known.containers
						.filter(({ place }) => place === id)
						.map((container) => (
							<ContainerRow
								key={container.id}
								container={container}
								value={value}
								onChange={onChange}
								covered={covered}
								onCover={onCover}
							/>
						))}
				</div>
			))}
		</fieldset>
	)
}

function ContainerRow({
	container: { id, name },
	value,
	onChange,
	covered,
	onCover,
}: Omit<Props, 'known'> & { readonly container: Known['containers'][number] }) {
	const chosen = value.find((each) => each.id === id)
	const { offer, takeOut, back } = useRemoval()
	const list = `containers.${id}`
	const take = (isTaken: boolean) => {
		if (!isTaken) takeOut({ is: 'container', container: id })
		else if (offer?.list === list) back()
		else onChange([...value, { id, mayLeaveOut: false, isNew: false }])
	}
	const change = (next: Partial<Chosen[number]>) =>
		onChange(value.map((each) => (each.id === id ? { ...each, ...next } : each)))
	return (
		<div className="flex flex-wrap gap-x-6 border-t border-line py-1">
			<span className="min-w-56">
				<Tick at={list} label={name} isTicked={chosen !== undefined} onChange={take} />
			</span>
			{!chosen && <PutBack list={list} />}
			{chosen && (
				<>
					<Tick label="new this season" isTicked={chosen.isNew} onChange={(isNew) => change({ isNew })} />
					<Tick
						label="may be left out"
						isTicked={chosen.mayLeaveOut}
						onChange={(mayLeaveOut) => change({ mayLeaveOut })}
					/>
					{covered && (
						<Tick
							label="paid by the agreement"
							isTicked={covered.includes(id)}
							onChange={(isPaid) => onCover(isPaid ? [...covered, id] : covered.filter((each) => each !== id))}
						/>
					)}
				</>
			)}
		</div>
	)
}
