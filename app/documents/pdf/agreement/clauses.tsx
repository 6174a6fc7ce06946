import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'
import type { AgreementView } from './view'

/** Signs: what is shorter fits a page and is kept on one. */
const longTitle = 120
const longText = 1800

/** Titles hang beside their text, so that a reader finds a clause by running down one edge. */
export function Clauses({ view }: { readonly view: AgreementView }) {
	return (
		<View>
			<Text style={[sheet.h2, { marginTop: 34 }]} minPresenceAhead={70}>
				What we agree
			</Text>
			{view.clauses.map(({ key, title, paragraphs }, index) => (
				<View
					key={key}
					style={[sheet.ruled, { paddingTop: 7, paddingBottom: 3 }]}
					wrap={title.length > longTitle || paragraphs.reduce((sum, { words }) => sum + words.length, 0) > longText}
				>
					<View style={[sheet.side, sheet.row]}>
						<Text style={[sheet.soft, { width: 20 }]}>{index + 1}</Text>
						<Text style={[sheet.bold, sheet.main]}>{title}</Text>
					</View>
					<View style={sheet.main}>
						{paragraphs.map((each) => (
							<Text key={each.key} style={{ marginBottom: 5 }} orphans={2} widows={2}>
								{each.words}
							</Text>
						))}
					</View>
				</View>
			))}
		</View>
	)
}
