'use client'
import type { DeskPicture } from '@/lib/proposal/desk/desk'

/** An option as the client will see it; a picture of its own, so that nothing in it can touch the page. */
export function Pictured({ pictures }: { readonly pictures: readonly DeskPicture[] }) {
	return (
		<div className="mt-3 grid gap-3">
			{pictures.map(({ place, name, svg, says }) => (
				<figure key={place}>
					<img
						alt={says}
						width="960"
						height="640"
						className="pictured block h-auto w-full bg-line"
						src={`data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`}
					/>
					{pictures.length > 1 && <figcaption className="text-sm text-soft">{name}</figcaption>}
				</figure>
			))}
		</div>
	)
}
