import type { FoundRow } from './found-row'

/** Where each colour was found. */
export function Marks({ colours }: { readonly colours: readonly FoundRow[] }) {
	return (
		<svg aria-hidden="true" className="absolute inset-0 h-full w-full" preserveAspectRatio="none" viewBox="0 0 1 1">
			{colours.map(({ key, hex, spot }) => (
				<ellipse
					key={key}
					cx={spot.x}
					cy={spot.y}
					rx=".022"
					ry=".03"
					fill={hex}
					stroke="#fff"
					strokeWidth="3"
					vectorEffect="non-scaling-stroke"
				/>
			))}
		</svg>
	)
}
