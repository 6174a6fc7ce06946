import { deficiencies } from '@/lib/colour/eyes/deficiency'
import { seenMatrix } from '@/lib/colour/eyes/seen-as'

/** What repaints the pictures of the desk as eyes without one kind of cones see them. */
export function SeenFilters() {
	return (
		<svg width="0" height="0" aria-hidden="true" className="absolute">
			{deficiencies.map((of) => (
				<filter key={of} id={`seen-${of}`} colorInterpolationFilters="linearRGB">
					<feColorMatrix
						type="matrix"
						values={[...seenMatrix(of).map((row) => [...row, 0, 0].join(' ')), '0 0 0 1 0'].join(' ')}
					/>
				</filter>
			))}
		</svg>
	)
}
