import { Document, Page, Text, View } from '@react-pdf/renderer'
import type { Drawing } from '../drawing'
import { footTop, hues, type Paper, sheet } from '../paper'
import { Clauses } from './clauses'
import type { AgreementPaper } from './input'
import { Payment } from './payment'
import { Places, Seasons } from './places'
import { ConsentWords, SigningRecord } from './record-page'
import { Signatures } from './signatures'
import { type AgreementView, agreementView } from './view'

const unsignedWords = 'Not signed. A copy for reading.'

/** One line, whatever the names are. */
function Foot({ view, isSigned, paper }: { view: AgreementView; isSigned: boolean; paper: Paper }) {
	const short = `${view.hash.slice(0, 8)} ${view.hash.slice(8, 16)}`
	return (
		<View fixed style={[sheet.foot, { top: footTop[paper] }]}>
			<Text>
				{isSigned ? `Signed agreement, hash of the text ${short} …` : `${unsignedWords} Hash of the text ${short} …`}
			</Text>
			<Text render={({ pageNumber, totalPages }) => `${pageNumber} of ${totalPages}`} />
		</View>
	)
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
	const made = new Date(input.at)
	const isSigned = view.record !== null
	return (
		<Document
			title={`Agreement, ${view.studio} and ${view.client}`.slice(0, 200)}
			author={view.studio.slice(0, 200)}
			language="en"
			creator="Doorsill"
			producer="Doorsill"
			creationDate={made}
			modificationDate={made}
		>
			<Page size={input.paper} style={sheet.page}>
				{isSigned ? null : (
					<Text fixed style={sheet.unsigned}>
						{unsignedWords}
					</Text>
				)}
				<Foot view={view} isSigned={isSigned} paper={input.paper} />
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
