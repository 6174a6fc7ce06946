import { Document, Page, Text, View } from '@react-pdf/renderer'
import { documentNamed } from '../document-named'
import type { Drawing } from '../drawing'
import { Foot } from '../foot'
import { hues, sheet } from '../paper'
import { Clauses } from './clauses'
import type { AgreementPaper } from './input'
import { Payment } from './payment'
import { Places, Seasons } from './places'
import { ConsentWords, SigningRecord } from './record-page'
import { Signatures } from './signatures'
import { type AgreementView, agreementView } from './view'

const unsignedWords = 'Not signed. A copy for reading.'

function footOf({ hash, record }: AgreementView): string {
	const short = `hash of the text ${hash.slice(0, 8)} ${hash.slice(8, 16)} …`
	return record === null ? `${unsignedWords} H${short.slice(1)}` : `Signed agreement, ${short}`
}

function Head({ view }: { view: AgreementView }) {
	return (
		<View>
			<View style={{ flexDirection: 'row', gap: 3, marginBottom: 26 }}>
				{view.seasons.map(({ key, quarter }) => (
					<View key={key} style={{ flex: 1, height: 4, backgroundColor: hues[quarter] }} />
				))}
			</View>
			<Text style={sheet.h1}>Agreement</Text>
			<Text style={{ fontSize: 12, lineHeight: 1.45, marginTop: 9 }}>
				between <Text style={sheet.bold}>{view.studio}</Text> and <Text style={sheet.bold}>{view.client}</Text>
			</Text>
			<Text style={[sheet.soft, { fontSize: 12, lineHeight: 1.45 }]}>{view.term}</Text>
			{view.supersedes === null ? null : (
				<Text style={[sheet.soft, { marginTop: 6 }]}>
					Issue {view.number}. It takes the place of the one before once both have signed it.
				</Text>
			)}
		</View>
	)
}

function Parties({ view }: { view: AgreementView }) {
	return (
		<View style={{ flexDirection: 'row', marginTop: 20 }}>
			<View style={{ flex: 1, paddingRight: 20 }}>
				<Text style={sheet.soft}>The studio, “we”</Text>
				<Text style={sheet.bold}>{view.studio}</Text>
				<Text>Signs for it: {view.signedBy}</Text>
			</View>
			<View style={{ flex: 1 }}>
				<Text style={sheet.soft}>The client, “you”</Text>
				<Text style={sheet.bold}>{view.client}</Text>
			</View>
		</View>
	)
}

/** The agreement as a file: the text, the signatures, and as its last page the record of the signing. */
export function AgreementPdf({ input, drawing }: { input: AgreementPaper; drawing: Drawing }) {
	const view = agreementView(input, drawing)
	const isSigned = view.record !== null
	return (
		<Document
			{...documentNamed({
				title: `Agreement, ${view.studio} and ${view.client}`,
				author: view.studio,
				at: new Date(input.at),
			})}
		>
			<Page size={input.paper} style={sheet.page}>
				{isSigned ? null : (
					<Text fixed style={sheet.unsigned}>
						{unsignedWords}
					</Text>
				)}
				<Foot says={footOf(view)} paper={input.paper} />
				<Head view={view} />
				<Parties view={view} />
				<Places view={view} />
				<Seasons view={view} />
				<Payment view={view} />
				<Clauses view={view} />
				<Signatures view={view} />
				{view.consent === null ? null : <ConsentWords consent={view.consent} />}
				{view.record === null ? null : <SigningRecord record={view.record} hasReplaced={view.hasReplaced} />}
			</Page>
		</Document>
	)
}
