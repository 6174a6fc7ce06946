import { Document, Page, Text, View } from '@react-pdf/renderer'
import { Amounts } from '../amounts'
import { documentNamed } from '../document-named'
import type { Drawing } from '../drawing'
import { Facts } from '../facts'
import { Foot } from '../foot'
import { Lacking } from '../lacking'
import { sheet } from '../paper'
import { Head } from './head'
import { type InvoicePaper, invoiceView, type SheetView } from './invoice-view'

/** The sheet of an invoice or of a credit note, as the site shows it. */
function Sheet({ of }: { readonly of: SheetView }) {
	return (
		<>
			<Head title={of.title} from={of.from} to={of.to} address={of.address} />
			<Facts of={of.facts} />
			<Amounts rows={of.rows} total={of.total} />
			{of.exempt === null ? null : <Text style={{ marginTop: 8 }}>{of.exempt}</Text>}
			{of.pay === '' ? null : (
				<View style={{ marginTop: 10 }}>
					<Text style={sheet.h2} minPresenceAhead={40}>
						How to pay
					</Text>
					<Text>{of.pay}</Text>
				</View>
			)}
		</>
	)
}

/** An invoice as a file, and on a page of its own each credit note to it. */
export function InvoicePdf({ input, drawing }: { readonly input: InvoicePaper; readonly drawing: Drawing }) {
	const [first, ...notes] = invoiceView(input, drawing)
	if (first === undefined) return <Document />
	const last = input.notes.at(-1)?.on ?? input.invoice.on
	return (
		<Document {...documentNamed({ title: first.title, author: first.from, at: new Date(`${last}T00:00:00Z`) })}>
			{[first, ...notes].map((each) => (
				<Page key={each.title} size={input.paper} style={sheet.page}>
					<Foot says={each.title} paper={input.paper} />
					<Sheet of={each} />
					<Lacking drawing={drawing} />
				</Page>
			))}
		</Document>
	)
}
