import { Text, View } from '@react-pdf/renderer'
import type { AmountRow } from '@/lib/money/words/sheet'
import { sheet } from './paper'

/** Signs: what is shorter is kept on one page. */
const most = 900

const Row = ({ of: { words, amount } }: { readonly of: AmountRow }) => (
	<View style={sheet.ruled} wrap={words.length > most}>
		<Text style={[sheet.main, { paddingRight: 18 }]}>{words}</Text>
		<Text style={sheet.figure}>{amount}</Text>
	</View>
)

type Props = { readonly rows: readonly AmountRow[]; readonly total: string }

/** Lines, tax and the total in one column of figures; the total is never alone on a page. */
export function Amounts({ rows, total }: Props) {
	const last = rows.at(-1)
	return (
		<View style={{ marginTop: 24 }}>
			<View style={[sheet.row, sheet.soft, { paddingBottom: 3 }]} minPresenceAhead={40}>
				<Text style={sheet.main}>What</Text>
				<Text style={sheet.figure}>Amount</Text>
			</View>
			{rows.slice(0, -1).map((row) => (
				<Row key={row.key} of={row} />
			))}
			<View wrap={(last?.words.length ?? 0) > most}>
				{last === undefined ? null : <Row of={last} />}
				<View style={[sheet.strong, sheet.row, sheet.total]}>
					<Text style={sheet.main}>Total</Text>
					<Text style={sheet.figure}>{total}</Text>
				</View>
			</View>
		</View>
	)
}
