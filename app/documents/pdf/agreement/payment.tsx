import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'
import type { AgreementView } from './view'

type Row = AgreementView['payment']['rows'][number]

const Instalment = ({ of: { number, due, amount } }: { readonly of: Row }) => (
	<View style={sheet.ruled} wrap={false}>
		<Text style={[sheet.soft, { width: 30 }]}>{number}</Text>
		<Text style={sheet.main}>{due}</Text>
		<Text style={sheet.right}>{amount}</Text>
	</View>
)

/** The sum is never alone on a page. */
function Last({ of, total }: { readonly of: Row; readonly total: string }) {
	return (
		<View wrap={false}>
			<Instalment of={of} />
			<View style={[sheet.ruled, sheet.bold]}>
				<Text style={sheet.main}>Instalments together</Text>
				<Text style={sheet.right}>{total}</Text>
			</View>
		</View>
	)
}

export function Payment({ view: { payment, total } }: { readonly view: AgreementView }) {
	const last = payment.rows.at(-1)
	return (
		<View>
			<View minPresenceAhead={60}>
				<Text style={sheet.h2}>How it is paid</Text>
				<Text style={{ marginBottom: 5 }}>{payment.plan}. Tax is added as the law asks.</Text>
			</View>
			{payment.rows.slice(0, -1).map((row) => (
				<Instalment key={row.number} of={row} />
			))}
			{last === undefined ? null : <Last of={last} total={total} />}
		</View>
	)
}
