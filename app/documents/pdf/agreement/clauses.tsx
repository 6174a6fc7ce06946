import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'
import type { AgreementView } from './view'

type Clause = AgreementView['clauses'][number]

/** Signs: what is shorter fits a page and is kept on one. */
const most = { title: 120, text: 1800 }
const isLong = ({ title, paragraphs }: Clause) =>
	title.length > most.title || paragraphs.reduce((sum, { words }) => sum + words.length, 0) > most.text

const Title = ({ number, title }: { readonly number: number; readonly title: string }) => (
	<>
		<Text style={[sheet.soft, { width: 20 }]}>{number}</Text>
		<Text style={[sheet.bold, sheet.main]}>{title}</Text>
	</>
)

const Paragraphs = ({ of }: { readonly of: Clause['paragraphs'] }) =>
	of.map(({ key, words }) => (
		<Text key={key} style={{ marginBottom: 5 }} orphans={2} widows={2}>
			{words}
		</Text>
	))

/** Titles hang beside their text, so that a reader finds a clause by running down one edge; above it where it is long. */
function One({ clause, number }: { readonly clause: Clause; readonly number: number }) {
	const { title, paragraphs } = clause
	if (isLong(clause))
		return (
			<View style={[sheet.ruled, { flexDirection: 'column', paddingTop: 7 }]}>
				<View style={[sheet.row, { marginBottom: 4 }]} minPresenceAhead={40}>
					<Title number={number} title={title} />
				</View>
				<View style={{ paddingLeft: sheet.side.width }}>
					<Paragraphs of={paragraphs} />
				</View>
			</View>
		)
	return (
		<View style={[sheet.ruled, { paddingTop: 7, paddingBottom: 3 }]} wrap={false}>
			<View style={[sheet.side, sheet.row]}>
				<Title number={number} title={title} />
			</View>
			<View style={sheet.main}>
				<Paragraphs of={paragraphs} />
			</View>
		</View>
	)
}

export function Clauses({ view }: { readonly view: AgreementView }) {
	return (
		<View>
			<Text style={[sheet.h2, { marginTop: 34 }]} minPresenceAhead={70}>
				What we agree
			</Text>
			{view.clauses.map((clause, index) => (
				<One key={clause.key} clause={clause} number={index + 1} />
			))}
		</View>
	)
}
