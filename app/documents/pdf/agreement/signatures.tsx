import { Path, Svg, Text, View } from '@react-pdf/renderer'
import type { Stroke } from '@/lib/agreement/signing/stroke'
import { grouped } from '@/lib/agreement/verify/pasted-hash'
import { ink, sheet, soft } from '../paper'
import type { AgreementView } from './view'

const at = ([x, y]: readonly [number, number]) => `${x} ${y}`

/** A line of one point is a dot: with a round end, it shows. */
const lineOf = ([first = [0, 0], ...rest]: Stroke[number]): string =>
	`M ${at(first)} ${(rest.length === 0 ? [first] : rest).map((point) => `L ${at(point)}`).join(' ')}`

const Drawn = ({ stroke }: { readonly stroke: Stroke }) => (
	<Svg viewBox="0 0 1000 400" style={{ width: 170, height: 68 }}>
		<Path
			d={stroke.map(lineOf).join(' ')}
			stroke={ink}
			strokeWidth={9}
			strokeLinecap="round"
			strokeLinejoin="round"
			fill="none"
		/>
	</Svg>
)

type One = AgreementView['signatures'][number]

/** A name of a few words stays whole with its line; a very long one may go over to the next page. */
function Signature({ of, isLong }: { readonly of: One; readonly isLong: boolean }) {
	return (
		<View style={{ flex: 1, paddingRight: 24 }} wrap={isLong}>
			<Text style={sheet.soft}>{of.for}</Text>
			<View style={{ flexGrow: 1, minHeight: of.stroke === null ? 0 : 68 }}>
				{of.stroke === null ? null : <Drawn stroke={of.stroke} />}
			</View>
			<Text style={{ fontSize: of.name.length > 60 ? 9.2 : 15, lineHeight: 1.35, paddingTop: 8, paddingBottom: 4 }}>
				{of.name}
			</Text>
			<Text style={[sheet.soft, { borderTop: `0.8pt solid ${soft}`, paddingTop: 4, fontSize: 8 }]}>{of.how}</Text>
		</View>
	)
}

export function Signatures({ view: { signatures, hash } }: { readonly view: AgreementView }) {
	if (signatures.length === 0) return null
	const isLong = signatures.some(({ name }) => name.length > 400)
	return (
		<View wrap={isLong}>
			<Text style={[sheet.h2, { marginTop: 34 }]}>Signatures</Text>
			<Text style={{ marginBottom: 10 }}>To the text above, whose hash is {grouped(hash)}.</Text>
			<View style={sheet.row}>
				{signatures.map((each) => (
					<Signature key={`${each.for} ${each.how} ${each.name}`} of={each} isLong={isLong} />
				))}
			</View>
		</View>
	)
}
