/** A globe with a crack in it. */
export function WrongMark() {
	return (
		<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" className="shrink-0">
			<path
				d="M6.5 3V1.5h3V3M8 3a5.5 5.5 0 1 0 .01 0M8 3 6.5 6.5l3 2L7.6 11.4"
				fill="none"
				stroke="currentColor"
				strokeWidth="1.5"
				strokeLinecap="round"
				strokeLinejoin="round"
			/>
		</svg>
	)
}
