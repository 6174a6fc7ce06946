'use client'
import { numberWord } from '@/lib/format/words'
import type { DeskOption } from '@/lib/proposal/desk/desk'

const hardToSee = (count: number) => `${numberWord(count)} ${count === 1 ? 'thing is' : 'things are'} hard to see.`

/** The palette as colour-blind eyes see it, and what runs together for them. */
export function Seen({ seen: { strips, says }, of }: { readonly seen: DeskOption['seen']; readonly of: string }) {
	if (strips.every(({ hexes }) => hexes.length === 0)) return null
	return (
		<div className="mt-1 text-sm">
			<details>
				<summary className="cursor-pointer">
					<span className="does inline-block">
						As colour-blind eyes see it<span className="sr-only">: {of}</span>
					</span>
					{says.length > 0 && <span className="block text-soft sm:ms-3 sm:inline">{hardToSee(says.length)}</span>}
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
				{says.length > 0 && (
					<ul className="mt-2 list-disc ps-5 text-soft">
						{says.map((each) => (
							<li key={each}>{each}</li>
						))}
					</ul>
				)}
			</details>
		</div>
	)
}
