import { Text, View } from '@react-pdf/renderer'
import { proves, provesNot } from '@/lib/agreement/verify/proves'
import { placeholder } from '../drawing'
import { sheet } from '../paper'
import type { RecordView } from './record-view'
import type { AgreementView } from './view'

/** Signs: what is shorter is kept on one page. */
const mostWords = 2000

const small = { fontSize: 8, lineHeight: 1.45 } as const

export function ConsentWords({ consent }: { readonly consent: NonNullable<AgreementView['consent']> }) {
	return (
		<View style={small}>
			<Text style={[sheet.h2, { marginTop: 34 }]} minPresenceAhead={90}>
				The words on electronic records, as they were shown
			</Text>
			{consent.points.map(({ key, title, says }) => (
				<View key={key} style={[sheet.row, { marginBottom: 4 }]} wrap={says.length > mostWords}>
					<Text style={[sheet.side, sheet.bold]}>{title}</Text>
					<Text style={sheet.main}>{says}</Text>
				</View>
			))}
			{consent.sentences.map((text) => (
				<View key={text} style={[sheet.row, { marginBottom: 4 }]}>
					<Text style={sheet.side} />
					<Text style={[sheet.main, sheet.bold]}>{text}</Text>
				</View>
			))}
		</View>
	)
}

function Part({ part: { title, lines } }: { readonly part: RecordView[number] }) {
	return (
		<View style={{ marginTop: 9 }}>
			<Text style={[sheet.bold, { marginBottom: 2 }]} minPresenceAhead={30}>
				{title}
			</Text>
			{lines.map(({ of, says }) => (
				<View key={of} style={[sheet.ruled, { paddingVertical: 1.6 }]}>
					<Text style={[sheet.side, sheet.soft]}>{of}</Text>
					<Text style={sheet.main}>{says.join('\n')}</Text>
				</View>
			))}
		</View>
	)
}

const Said = ({ title, says }: { readonly title: string; readonly says: readonly string[] }) => (
	<View style={{ flex: 1, paddingRight: 18 }}>
		<Text style={sheet.bold}>{title}</Text>
		{says.map((text) => (
			<Text key={text} style={{ marginTop: 3 }}>
				{text}
			</Text>
		))}
	</View>
)

const lacking = `${placeholder} stands for a sign that the letters of this file lack. A name is followed by the code points (Unicode) of all of its signs. The text that was signed holds the signs themselves, and its hash was made of them.`

type Of = { readonly record: RecordView; readonly hasReplaced: boolean }

export function SigningRecord({ record, hasReplaced }: Of) {
	return (
		<View break style={small}>
			<Text style={[sheet.h2, { marginTop: 0, marginBottom: 2 }]}>The record of the signing</Text>
			{record.map((part) => (
				<Part key={part.title} part={part} />
			))}
			{hasReplaced ? <Text style={{ marginTop: 8 }}>{lacking}</Text> : null}
			<View style={[sheet.row, { marginTop: 14 }]} wrap={false}>
				<Said title="What this shows" says={proves} />
				<Said title="What it does not show" says={provesNot} />
			</View>
		</View>
	)
}
