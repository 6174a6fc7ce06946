import { useId } from 'react'
import type { WallKind } from '@/lib/container/site'

type Tile = { readonly width: number; readonly height: number; readonly shade: string; readonly light: string }

/** How a wall is laid, in cm: lines of shade and of light that repeat. */
const tiles: Record<WallKind, Tile> = {
	clapboard: { width: 40, height: 13, shade: 'M0 12.4h40', light: 'M0 .6h40' },
	brick: {
		width: 21,
		height: 15,
		shade: 'M0 7.5h21M0 15h21M10.5 0v7.5M0 7.5V15M21 7.5V15',
		light: 'M0 8.2h21M0 .7h21',
	},
	fieldstone: {
		width: 76,
		height: 48,
		shade:
			'M0 15c12 2 22-2 34 0s26 1 42-1M0 33c16-2 26 1 40 0s22-2 36 0M21 0c1 6-1 10 0 15M55 0c-1 5 1 9 0 14M12 15c1 7-1 12 0 18M39 14c-2 7 1 13 0 19M64 14c1 7-1 12 0 19M26 33c1 6-1 10 0 15M52 33c-1 5 0 10 0 15',
		light: 'M0 16.2c12 2 22-2 34 0s26 1 42-1M0 34.2c16-2 26 1 40 0s22-2 36 0',
	},
	stucco: {
		width: 34,
		height: 30,
		shade: 'M4 6h.1M17 3h.1M28 11h.1M9 18h.1M22 22h.1M31 27h.1M2 27h.1M14 12h.1',
		light: 'M8 3h.1M25 5h.1M13 24h.1M30 18h.1M4 13h.1',
	},
	'shop glass': { width: 120, height: 160, shade: 'M0 0v160M120 0v160M0 40h120', light: 'M8 60 60 8M14 74 76 12' },
}

/** The client's own wall, flat and in its colour, down to the paving. */
export function Wall({ kind, hex, label }: { kind: WallKind; hex: string; label: string }) {
	const id = useId()
	const { width, height, shade, light } = tiles[kind]
	return (
		<svg
			role="img"
			aria-label={label}
			width="100%"
			height="100%"
			preserveAspectRatio="xMidYMax slice"
			viewBox="0 0 480 240"
			className="wall absolute inset-0 block"
		>
			<defs>
				<pattern id={id} width={width} height={height} patternUnits="userSpaceOnUse">
					<path d={light} stroke="#fff" strokeOpacity=".16" strokeWidth="1" fill="none" strokeLinecap="round" />
					<path d={shade} stroke="#000" strokeOpacity=".22" strokeWidth="1.1" fill="none" strokeLinecap="round" />
				</pattern>
				<linearGradient id={`${id}f`} x2="1" y2="1">
					<stop offset="0" stopColor="#fff" stopOpacity=".14" />
					<stop offset=".65" stopColor="#000" stopOpacity=".1" />
				</linearGradient>
			</defs>
			<rect width="480" height="214" fill={hex} />
			<rect width="480" height="214" fill={`url(#${id})`} />
			<rect width="480" height="214" fill={`url(#${id}f)`} />
			<rect y="200" width="480" height="14" fill="#000" opacity=".16" />
			<rect y="214" width="480" height="26" fill="#b9b6ab" />
			<path
				d="M0 214.5h480M52 214 20 240M156 214l-16 26M240 214v26M324 214l16 26M428 214l32 26"
				stroke="#000"
				strokeOpacity=".22"
				fill="none"
			/>
		</svg>
	)
}
