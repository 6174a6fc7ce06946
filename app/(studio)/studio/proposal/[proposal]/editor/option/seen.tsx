'use client'
import type { DeskOption } from '@/lib/proposal/desk/desk'

/** The palette as colour-blind eyes see it, and what runs together for them. */
export function Seen({ seen: { strips, says }, of }: { readonly seen: DeskOption['seen']; readonly of: string }) {
	if (strips.every(({ hexes }) => hexes.length === 0)) return null
	return (
		<div className="mt-1 text-sm">
			{says.length > 0 && <p className="text-soft">{says.join(' ')}</p>}
			<details>
				<summary className="does inline-block">
					The strip as colour-blind eyes see it<span className="sr-only">: {of}</span>
				</summary>
				<div className="mt-1 grid max-w-2xl gap-4 sm:grid-cols-3">
					{strips.map(({ of: eyes, words, hexes }) => (
						<figure key={eyes}>
							<svg
								width="100%"
								height="36"
								viewBox={`0 0 ${Math.max(1, hexes.length)} 1`}
								preserveAspectRatio="none"
								aria-hidden="true"
								className="block"
							>
								{Object.entries(hexes).map(([at, hex]) => (
									<rect key={at} x={at} width="1.01" height="1" fill={hex} />
								))}
							</svg>
							<figcaption className="mt-1 text-soft">{words}</figcaption>
						</figure>
					))}
				</div>
			</details>
		</div>
	)
}
