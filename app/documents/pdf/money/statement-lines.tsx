import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'
import type { StatementSheet } from './statement-view'

type Line = StatementSheet['lines'][number]
type Figures = Pick<Line, 'charged' | 'paid' | 'balance'>

/** Signs: what is shorter is kept on one page. */
const most = 900

/** In points: wide enough for ten figures, so that most lines stay one line on either paper. */
const columns = { day: { width: 84 }, figure: { width: 68, textAlign: 'right' } } as const

const Amounts = ({ charged, paid, balance }: Figures) => (
	<>
		<Text style={columns.figure}>{charged}</Text>
		<Text style={columns.figure}>{paid}</Text>
		<Text style={columns.figure}>{balance}</Text>
	</>
)

const Row = ({ of }: { readonly of: Line }) => (
	<View style={sheet.ruled} wrap={of.words.length > most}>
		<Text style={columns.day}>{of.day}</Text>
		<Text style={[sheet.main, { paddingRight: 8 }]}>{of.words}</Text>
		<Amounts charged={of.charged} paid={of.paid} balance={of.balance} />
	</View>
)

/** What the columns are: again on each page. */
const Heads = () => (
	<View style={[sheet.row, sheet.soft, { paddingBottom: 3 }]} fixed>
		<Text style={columns.day}>Day</Text>
		<Text style={sheet.main}>What</Text>
		<Amounts charged="Charged" paid="Paid or credited" balance="Balance" />
	</View>
)

type Props = { readonly lines: readonly Line[]; readonly sums: Figures }

/** Each line with the balance after it; the sums of the columns are never alone on a page. */
export function Lines({ lines, sums }: Props) {
	const last = lines.at(-1)
	return (
		<View style={{ fontSize: 8.6 }}>
			<Heads />
			{lines.slice(0, -1).map((line) => (
				<Row key={line.key} of={line} />
			))}
			<View wrap={(last?.words.length ?? 0) > most}>
				{last === undefined ? null : <Row of={last} />}
				<View style={[sheet.row, sheet.strong, sheet.bold, { paddingTop: 6 }]}>
					<Text style={sheet.main}>Together</Text>
					<Amounts {...sums} />
				</View>
			</View>
		</View>
	)
}
