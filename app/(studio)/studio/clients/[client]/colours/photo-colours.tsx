'use client'
import { type ChangeEvent, type MouseEvent, useId, useRef, useState } from 'react'
import { addColours } from './actions'
import { type Found, FoundColour, type FoundRow, madeOne } from './found-row'
import { Marks } from './marks'

type Looked = { readonly colours: readonly Found[]; readonly preview: string; readonly says: string }
type State =
	| { readonly is: 'empty' | 'looking' }
	| { readonly is: 'wrong'; readonly says: string }
	| ({ readonly is: 'found' } & Looked)

type Props = { readonly client: string; readonly place: string; readonly once: string }

const outOfReach = 'The photo did not arrive. Try again where the reception is better.'

async function ask(client: string, photo: File, white: { x: number; y: number } | null): Promise<State> {
	const body = new FormData()
	body.set('photo', photo)
	if (white !== null) {
		body.set('whiteX', white.x.toFixed(4))
		body.set('whiteY', white.y.toFixed(4))
	}
	try {
		const response = await fetch(`/studio/clients/${client}/photo`, { method: 'POST', body })
		if (response.status === 413) return { is: 'wrong', says: 'This photo is larger than 15 MB. Send a smaller one.' }
		if (response.status !== 200 && response.status !== 422) return { is: 'wrong', says: outOfReach }
		const answer: Looked = await response.json()
		return response.status === 200 ? { is: 'found', ...answer } : { is: 'wrong', says: answer.says }
	} catch {
		return { is: 'wrong', says: outOfReach }
	}
}

/** A photo of the front becomes colours of the place: looked at by the server, chosen and named here, never kept. */
export function PhotoColours({ client, place, once }: Props) {
	const id = useId()
	const photo = useRef<File>(null)
	const [state, setState] = useState<State>({ is: 'empty' })
	const [rows, setRows] = useState<readonly FoundRow[]>([])
	const look = async (white: { x: number; y: number } | null) => {
		if (photo.current === null) return
		setState({ is: 'looking' })
		const next = await ask(client, photo.current, white)
		setRows(next.is === 'found' ? next.colours.map((each) => ({ ...each, key: each.hex })) : [])
		setState(next)
	}
	const choose = (event: ChangeEvent<HTMLInputElement>) => {
		photo.current = event.target.files?.[0] ?? null
		void look(null)
	}
	const tap = (event: MouseEvent<HTMLButtonElement>) => {
		const { left, top, width, height } = event.currentTarget.getBoundingClientRect()
		void look({ x: (event.clientX - left) / width, y: (event.clientY - top) / height })
	}
	return (
		<div className="mt-2">
			<label htmlFor={id} className="block text-sm font-semibold">
				Take the colours from a photo
			</label>
			<input id={id} type="file" accept="image/jpeg,image/png,image/webp" className="box" onChange={choose} />
			<p role="status" className="min-h-6 font-semibold">
				{state.is === 'looking' && 'Looking at the photo…'}
				{(state.is === 'wrong' || state.is === 'found') && state.says}
			</p>
			{state.is === 'found' && (
				<>
					<button type="button" className="relative block w-full max-w-md" onClick={tap}>
						<img
							src={state.preview}
							alt="Your photo. Tap something white in it to correct the light."
							className="block w-full"
						/>
						<Marks colours={rows} />
					</button>
					<p className="text-sm text-soft">Does the light tint it? Tap something white in the photo.</p>
					<form action={addColours} className="mt-2">
						<input type="hidden" name="once" value={once} />
						<input type="hidden" name="client" value={client} />
						<input type="hidden" name="place" value={place} />
						<ul>
							{rows.map((row, index) => (
								<FoundColour
									key={row.key}
									row={row}
									number={index + 1}
									others={rows.filter(({ key }) => key !== row.key)}
									onDrop={() => setRows(rows.filter(({ key }) => key !== row.key))}
									onTakeIn={(other) => setRows(madeOne(rows, row, other))}
								/>
							))}
						</ul>
						<button type="submit" className="act mt-2">
							Keep these colours
						</button>
					</form>
				</>
			)}
		</div>
	)
}
