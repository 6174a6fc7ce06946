/** A palette's colours in one small row. */
export function Colours({ hexes, height = 12 }: { readonly hexes: string; readonly height?: number }) {
	const all = [...new Set(hexes.split(' ').filter(Boolean))]
	if (all.length === 0) return null
	return (
		<svg
			aria-hidden="true"
			width="100%"
			height={height}
			viewBox={`0 0 ${all.length} 1`}
			preserveAspectRatio="none"
			className="block"
		>
			{all.map((hex, index) => (
				<rect key={hex} x={index} width="1.02" height="1" fill={hex} />
			))}
		</svg>
	)
}
