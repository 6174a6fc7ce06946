'use client'
// Before whatever makes a schema.
import './no-eval'

import { type FormEvent, useEffect, useRef, useState } from 'react'
import { ErrorSummary } from '@/app/ui/error-summary'
import type { LengthUnit } from '@/lib/format/length'
import { boxesOf } from '@/lib/forms/places/kerb-fields'
import type { FieldErrors } from '@/lib/forms/read'
import { ContainerBoxes } from './boxes/container-boxes'
import { labelsOf } from './boxes/labels'
import { PhotoBox } from './boxes/photo-box'
import { type Known, PlaceBoxes } from './boxes/place-boxes'
import { Foot } from './foot'
import type { Fields } from './kept/entry'
import { KeptList } from './kept/kept-list'
import { useKept } from './kept/use-kept'
import { type Of, useWriting } from './writing/use-writing'

type Props = {
	readonly of: Of
	readonly places: readonly Known[]
	readonly unit: LengthUnit
	readonly first: { readonly id: string; readonly fields: Fields; readonly errors: FieldErrors }
	readonly blank: Fields
}

const spots = [
	'left of the door',
	'right of the door',
	'under the window',
	'on the steps',
	'by the gate',
	'on the porch',
]

/** What is written down at the kerb: one column for a thumb, kept here until the studio has it. */
export function Kerb({ of, places, unit, first, blank }: Props) {
	const form = useRef<HTMLFormElement>(null)
	const [isAlive, setIsAlive] = useState(false)
	useEffect(() => setIsAlive(true), [])
	const kept = useKept(of.person)
	const added = kept.sent.flatMap(({ client, fields, place }) =>
		client === of.client && fields.place === '' ? [{ id: place, name: fields['new.name'] ?? '' }] : [],
	)
	const known = [...places, ...added.filter(({ id }) => id !== 'before' && !places.some((place) => place.id === id))]
	const writing = useWriting({ form, of, known, unit, first, blank, onLost: kept.lost })
	const { start, now, numbers, photo } = writing
	const { fields, errors } = start

	const keeps = isAlive && kept.reach !== 'keeps nothing'
	const submit = (event: FormEvent) => {
		if (!keeps) return
		event.preventDefault()
		void writing.handOver().then(async (isGone) => {
			if (!isGone) return
			scrollTo({ top: 0 })
			await kept.look()
			await kept.sendAll()
		})
	}
	const addOne = (isSame: boolean) => {
		void writing.add(isSame)
		const next = (numbers.at(-1) ?? 0) + 1
		requestAnimationFrame(() => document.getElementById(`heading-${next}`)?.focus())
	}
	return (
		<>
			{isAlive && (
				<KeptList
					entries={kept.entries.filter(({ id }) => id !== start.id)}
					client={of.client}
					onTake={(entry) => void writing.take(entry).then(kept.look)}
					onDrop={(id) => void kept.drop(id)}
				/>
			)}
			<form
				ref={form}
				method="post"
				encType="multipart/form-data"
				action={`/studio/clients/${of.client}/kerb/keep`}
				className="kerb"
				noValidate
				onInput={() => void writing.follow()}
				onSubmit={submit}
			>
				<ErrorSummary key={JSON.stringify(errors)} errors={errors} labels={labelsOf(now)} />
				<datalist id="spots">
					{spots.map((spot) => (
						<option key={spot} value={spot} />
					))}
				</datalist>
				<div key={start.id}>
					<input type="hidden" name="once" value={start.id} />
					<PhotoBox photo={photo} error={errors.photo} onPhoto={(next) => void writing.takePhoto(next)} />
					<PlaceBoxes known={known} first={fields} errors={errors} />
					{numbers.map((number, index) => (
						<ContainerBoxes
							key={number}
							number={number}
							nth={index + 1}
							first={boxesOf(fields, number)}
							now={boxesOf(now, number)}
							errors={errors}
							unit={unit}
							isAlive={isAlive}
							onRemove={numbers.length > 1 ? () => void writing.remove(number) : null}
						/>
					))}
				</div>
				{isAlive && (
					<div className="mt-8 grid grid-cols-2 gap-2">
						<button type="button" className="act" onClick={() => addOne(true)}>
							Same again
						</button>
						<button type="button" className="act" onClick={() => addOne(false)}>
							Another container
						</button>
					</div>
				)}
				{writing.isWriting && (
					<details className="mt-4">
						<summary className="does inline-flex items-center">Discard what is written here</summary>
						<button type="button" className="act" onClick={() => void writing.discard()}>
							Discard it for good
						</button>
					</details>
				)}
				<Foot of={of} isAlive={isAlive} kept={kept} isWriting={writing.isWriting} />
			</form>
		</>
	)
}
