import { coverSize } from '@/lib/forms/pictures/cover-address'
import type { Cover } from '@/lib/proposal/offer/cover'

const ink = '#14241d'
const soft = '#4b5a53'
const ground = '#fbfdfc'
const bands = 380

function Colours({ hexes }: { hexes: readonly string[] }) {
	return (
		<div style={{ display: 'flex', flex: 1, height: '100%' }}>
			{hexes.map((hex) => (
				<div key={hex} style={{ display: 'flex', flex: 1, backgroundColor: hex }} />
			))}
		</div>
	)
}

const line = { display: 'block', lineClamp: 1 } as const

type Props = { readonly cover: Cover; readonly fonts: readonly string[] }

/** The picture of a link, in the boxes that its renderer knows: flex alone, no classes; `fonts` in the order of their trying. */
export function CoverPicture({ cover: { season, studio, palettes }, fonts }: Props) {
	const names = palettes.map(({ name }) => name).filter((name) => name !== '')
	return (
		<div
			style={{
				...coverSize,
				display: 'flex',
				flexDirection: 'column',
				backgroundColor: ground,
				color: ink,
				fontFamily: fonts.join(', '),
			}}
		>
			<div style={{ display: 'flex', height: bands, gap: 12 }}>
				{palettes.map(({ name, hexes }) => (
					<Colours key={`${name} ${hexes.join(' ')}`} hexes={hexes} />
				))}
			</div>
			<div style={{ display: 'flex', flex: 1, flexDirection: 'column', padding: '30px 56px 36px' }}>
				<div style={{ ...line, fontSize: 64, lineHeight: 1.15 }}>{season}</div>
				<div style={{ ...line, fontSize: 34, lineHeight: 1.3, color: soft }}>{names.join(' · ')}</div>
				<div style={{ ...line, fontSize: 30, lineHeight: 1.3, marginTop: 'auto' }}>{studio}</div>
			</div>
		</div>
	)
}
