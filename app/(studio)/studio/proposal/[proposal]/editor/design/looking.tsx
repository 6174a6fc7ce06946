'use client'
import { z } from 'zod'
import { deficiencies, deficiencyWords } from '@/lib/colour/eyes/deficiency'
import { Pick, Tick } from '../box'

const eyesSchema = z.enum(['all', ...deficiencies])

/** How the pictures are looked at: with which eyes, and whether a measure stands in them. */
export type Look = { readonly eyes: z.infer<typeof eyesSchema>; readonly measured: boolean }

export const firstLook: Look = { eyes: 'all', measured: false }

export function Looking({ value, onChange }: { readonly value: Look; readonly onChange: (next: Look) => void }) {
	return (
		<div className="mt-4 flex flex-wrap items-end gap-x-6 gap-y-2">
			<Pick
				label="See the pictures as"
				value={value.eyes}
				onChange={(eyes) => onChange({ ...value, eyes: eyesSchema.parse(eyes) })}
			>
				<option value="all">most people do</option>
				{deficiencies.map((of) => (
					<option key={of} value={of}>
						colour-blind eyes do: {deficiencyWords(of)}
					</option>
				))}
			</Pick>
			<Tick
				label="Show the measure"
				isTicked={value.measured}
				onChange={(measured) => onChange({ ...value, measured })}
			/>
		</div>
	)
}
