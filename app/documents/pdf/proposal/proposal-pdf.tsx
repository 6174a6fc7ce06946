import { Document, Page, Text, View } from '@react-pdf/renderer'
import { Amounts } from '../amounts'
import { documentNamed } from '../document-named'
import type { Drawing } from '../drawing'
import { Facts } from '../facts'
import { Foot } from '../foot'
import { Lacking } from '../lacking'
import { sheet } from '../paper'
import { Extras, Palettes, Pots } from './design'
import type { Pictured, ProposalPaper } from './input'
import { Hero, Others } from './picture'
import { type ProposalView, proposalView } from './view'

function Letter({ of: { letter, signedBy } }: { readonly of: ProposalView }) {
	return (
		<View style={{ marginTop: 24, fontSize: 10.5, lineHeight: 1.55 }}>
			{letter.map(({ key, words }) => (
				<Text key={key} style={{ marginBottom: 7 }} orphans={2} widows={2}>
					{words}
				</Text>
			))}
			<Text style={sheet.soft}>{signedBy}</Text>
		</View>
	)
}

function Price({ of: { rows, total, notes } }: { readonly of: ProposalView['price'] }) {
	return (
		<View>
			<Text style={[sheet.h2, { marginBottom: -16 }]} minPresenceAhead={90}>
				The price
			</Text>
			<Amounts rows={rows} total={total} />
			<View style={{ marginTop: 6 }}>
				{notes.map((words) => (
					<Text key={words} style={sheet.soft}>
						{words}
					</Text>
				))}
			</View>
		</View>
	)
}

function Cautions({ of }: { readonly of: ProposalView['cautions'] }) {
	if (of.length === 0) return null
	return (
		<View>
			<Text style={sheet.h2} minPresenceAhead={40}>
				Good to know
			</Text>
			{[...of, 'Local codes and licensed practice come first.'].map((words) => (
				<Text key={words} style={[sheet.soft, { marginBottom: 3 }]}>
					{words}
				</Text>
			))}
		</View>
	)
}

type Props = {
	readonly input: ProposalPaper
	readonly pictures: readonly Pictured[]
	readonly drawing: Drawing
}

/** What was approved as a file: the wall first, then who approved what, the letter, the pots and the price. */
export function ProposalPdf({ input, pictures, drawing }: Props) {
	const view = proposalView(input, pictures, drawing)
	const [hero, ...others] = view.pictures
	const { paper, at } = input
	return (
		<Document {...documentNamed({ title: view.title, author: view.studio, at: new Date(at) })}>
			<Page size={paper} style={sheet.page}>
				<Foot says={view.foot} paper={paper} />
				{hero === undefined ? null : <Hero of={hero} paper={paper} />}
				<Text style={[sheet.h1, { marginTop: hero === undefined ? 0 : 18 }]}>{view.title}</Text>
				<Facts of={view.facts} />
				<Letter of={view} />
				<Palettes of={view.palettes} />
				<Others of={others} paper={paper} />
				<Pots of={view.pots} />
				<Extras of={view.extras} />
				<Price of={view.price} />
				<Cautions of={view.cautions} />
				<Lacking drawing={drawing} />
			</Page>
		</Document>
	)
}
