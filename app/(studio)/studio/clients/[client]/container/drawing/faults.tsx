import type { Fault } from '@/lib/container/measured/measures'

type Props = {
	readonly faults: readonly Fault[]
	readonly labels: Readonly<Record<string, string>>
	readonly className: string
}

/** What is wrong with the measures as they stand, said as it comes and goes. */
export function Faults({ faults, labels, className }: Props) {
	return (
		<div role="status" className={className}>
			{faults.length > 0 && (
				<ul className="said wrong">
					{faults.map(({ field, says }) => (
						<li key={field + says}>
							<b className="font-semibold">{labels[field]}:</b> {says}
						</li>
					))}
				</ul>
			)}
		</div>
	)
}
