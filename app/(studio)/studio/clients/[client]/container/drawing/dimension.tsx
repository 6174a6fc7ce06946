type Line = { readonly name: string; readonly value: string | null }

type Along = Line & { readonly from: number; readonly to: number; readonly at: number; readonly labelAt: number }

const text = 'fill-ink text-[13px]'

/** A measure across, with its name above or below it. */
export function Across({ name, value, from, to, at, labelAt }: Along) {
	return (
		<g>
			<path d={`M${from} ${at - 4}v8M${to} ${at - 4}v8M${from} ${at}H${to}`} className="fill-none stroke-soft" />
			<text x={(from + to) / 2} y={labelAt} textAnchor="middle" className={text}>
				{name} <tspan className="font-bold">{value}</tspan>
			</text>
		</g>
	)
}

/** A measure up and down, with its name beside it. */
export function Upright({ name, value, from, to, at, labelAt }: Along) {
	const middle = (from + to) / 2
	return (
		<g>
			<path d={`M${at - 4} ${from}h8M${at - 4} ${to}h8M${at} ${from}V${to}`} className="fill-none stroke-soft" />
			<text x={labelAt} y={value === null ? middle + 4 : middle - 4} className={text}>
				{name}
			</text>
			<text x={labelAt} y={middle + 13} className={`${text} font-bold`}>
				{value}
			</text>
		</g>
	)
}
