type Props = { readonly wall: string | null; readonly hexes: string; readonly picture: string | null }

/** A client's wall with what stands before it, small enough for a row; flat while nothing was published. */
export function Thumbnail({ wall, hexes, picture }: Props) {
	if (picture !== null) return <img src={picture} alt="" width="56" height="44" loading="lazy" className="block" />
	const colours = [...new Set(hexes.split(' ').filter(Boolean))].slice(0, 4)
	const width = colours.length === 0 ? 0 : 36 / colours.length
	return (
		<svg aria-hidden="true" width="56" height="44" viewBox="0 0 56 44" className="block">
			<rect width="56" height="38" fill={wall ?? '#c9cec8'} />
			<rect y="38" width="56" height="6" fill="#b9b6ab" />
			{colours.map((hex, index) => (
				<rect key={hex} x={10 + index * width} y="14" width={width + 0.2} height="24" fill={hex} />
			))}
			{colours.length > 0 && <rect x="10" y="14" width="36" height="24" fill="none" stroke="#fff" strokeOpacity=".5" />}
		</svg>
	)
}
