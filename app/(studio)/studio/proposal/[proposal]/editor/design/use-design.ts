'use client'
import { useCallback, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import type { Option } from '../known'

export type Designing = { readonly isAsking: boolean; readonly says: string }

type Proposed = { readonly options: readonly Option[]; readonly short: string | null }
type Grown = { readonly option: Option }
type Found = { readonly substitutes: readonly StandIn[] }

const outOfReach = 'The server is out of reach, or something on the desk cannot be read yet. Nothing was changed.'

/** What is wrong with a recipe is said by the server, anything else in one sentence. */
async function whyNot(response: Response): Promise<string> {
	const { errors }: { errors?: { recipe?: string } } = response.status === 422 ? await response.json() : {}
	return errors?.recipe ?? outOfReach
}

/** What the server designs from the desk as it stands: palettes for the wall, a recipe grown to the containers. It keeps nothing. */
export function useDesign(base: string) {
	const [designing, setDesigning] = useState<Designing>({ isAsking: false, says: '' })
	const ask = useCallback(
		async <Answer>(what: 'propose' | 'grow' | 'substitutes', body: object): Promise<Answer | undefined> => {
			setDesigning({ isAsking: true, says: '' })
			try {
				const response = await fetch(`${base}/${what}`, {
					method: 'POST',
					headers: { 'content-type': 'application/json' },
					body: JSON.stringify(body),
				})
				if (response.status !== 200) {
					setDesigning({ isAsking: false, says: await whyNot(response) })
					return undefined
				}
				const answer: Answer = await response.json()
				setDesigning({ isAsking: false, says: '' })
				return answer
			} catch {
				setDesigning({ isAsking: false, says: outOfReach })
				return undefined
			}
		},
		[base],
	)
	const propose = useCallback((draft: DraftText) => ask<Proposed>('propose', { draft }), [ask])
	const grow = useCallback(
		(draft: DraftText, option: string, recipe: string | null) => ask<Grown>('grow', { draft, option, recipe }),
		[ask],
	)
	const standIns = useCallback(
		(draft: DraftText, material: string, container: string | null) =>
			ask<Found>('substitutes', { draft, material, container }),
		[ask],
	)
	const tell = useCallback((says: string) => setDesigning({ isAsking: false, says }), [])
	return { designing, propose, grow, standIns, tell }
}
