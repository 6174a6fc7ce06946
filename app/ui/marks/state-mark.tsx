import type { State } from '@/lib/proposal/state'

const ring = 'M8 2.5a5.5 5.5 0 1 1 0 11 5.5 5.5 0 0 1 0-11'
const drawings: Record<State['is'], { d: string }> = {
	drafting: { d: 'M3 8h10' },
	'waiting for an answer': { d: ring },
	'change asked for': { d: 'M12.5 8A4.5 4.5 0 1 1 9 3.6M9 1.5v2.4l2.3.6' },
	approved: { d: 'M3 8.5 6.5 12 13 4.5' },
	installed: { d: 'M3 5.5h10L11.8 13H4.2zM8 5.5V2M8 4 5.5 2.5M8 4l2.5-1.5' },
	skipped: { d: 'M2.5 11.5c1.5-6 7.5-7.5 10.5-1.5M13.5 6v4.5H9' },
	cancelled: { d: 'm4 4 8 8M12 4l-8 8' },
	withdrawn: { d: 'M13 8H3m4-4L3 8l4 4' },
	lapsed: { d: `${ring}M8 5v3.2l2 1.3` },
}

/** A state's small mark; its word stands beside it. */
export function StateMark({ state }: { state: State['is'] }) {
	return (
		<svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true" className="inline-block shrink-0 text-season">
			<path
				d={drawings[state].d}
				fill="none"
				stroke="currentColor"
				strokeWidth="1.8"
				strokeLinecap="round"
				strokeLinejoin="round"
			/>
		</svg>
	)
}
