import type { Quarter } from '@/lib/season/season'

const drawings: Record<Quarter, string> = {
	spring: 'M12 21V10M12 14c-4 0-6-2-6-6 4 0 6 2 6 6M12 11c0-4 2-7 6-7 0 5-2 7-6 7',
	summer:
		'M12 21v-7M12 14a4 4 0 1 1 0-8 4 4 0 0 1 0 8M12 2v2M5 10H3M21 10h-2M7 5 5.6 3.6M17 5l1.4-1.4M7 15l-1.4 1.4M17 15l1.4 1.4',
	autumn: 'M12 21v-6M12 15c-5 0-8-3-8-8 3 0 4 1 5 2 0-3 1-5 3-6 2 1 3 3 3 6 1-1 2-2 5-2 0 5-3 8-8 8',
	winter: 'M12 21V4M12 9 7 5M12 9l5-4M12 14l-6-4M12 14l6-4M12 18l-4-3M12 18l4-3',
}

/** The line drawing of a season, in its hue. */
export function SeasonMark({ quarter, size = 24 }: { quarter: Quarter; size?: number }) {
	return (
		<svg
			data-season={quarter}
			width={size}
			height={size}
			viewBox="0 0 24 24"
			aria-hidden="true"
			className="shrink-0 text-season"
		>
			<path
				d={drawings[quarter]}
				fill="none"
				stroke="currentColor"
				strokeWidth="1.6"
				strokeLinecap="round"
				strokeLinejoin="round"
			/>
		</svg>
	)
}
