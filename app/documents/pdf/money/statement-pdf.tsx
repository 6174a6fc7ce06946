import { Document, Page, Text, View } from '@react-pdf/renderer'
import { documentNamed } from '../document-named'
import type { Drawing } from '../drawing'
import { Foot } from '../foot'
import { Lacking } from '../lacking'
import { sheet } from '../paper'
import { Head } from './head'
import { Lines } from './statement-lines'
import { type StatementPaper, statementView } from './statement-view'

/** A client's account from day to day as a file. */
export function StatementPdf({ input, drawing }: { readonly input: StatementPaper; readonly drawing: Drawing }) {
	const view = statementView(input, drawing)
	const { rows, from } = input.statement
	const last = rows.at(-1)?.entry.on ?? from
	return (
		<Document {...documentNamed({ title: view.title, author: view.from, at: new Date(`${last}T00:00:00Z`) })}>
			<Page size={input.paper} style={sheet.page}>
				<Foot says={view.title} paper={input.paper} />
				<Head title={view.title} from={view.from} to={view.to} address="" />
				<Text style={{ marginTop: 24, marginBottom: 8 }}>{view.opening}</Text>
				<Lines lines={view.lines} sums={view.sums} />
				<View style={{ marginTop: 10 }}>
					<Text style={[sheet.bold, { fontSize: 12, lineHeight: 1.35 }]}>{view.closing}</Text>
				</View>
				<Lacking drawing={drawing} />
			</Page>
		</Document>
	)
}
