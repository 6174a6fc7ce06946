import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'
import type { ProposalView } from './view'

/** Signs: what is shorter is kept on one page. */
const most = 900

type Palette = ProposalView['palettes'][number]

const Strip = ({ of: { chips } }: { readonly of: Palette }) => (
	<View style={sheet.row}>
		{chips.map(({ key, hex, name, echoes }) => (
			<View key={key} style={{ flex: 1 }}>
				<View style={{ height: 38, backgroundColor: hex }} />
				<View style={{ paddingTop: 4, paddingRight: 6, fontSize: 8, lineHeight: 1.35 }}>
					<Text style={sheet.bold}>{name}</Text>
					{echoes === '' ? null : <Text style={sheet.soft}>{echoes}</Text>}
				</View>
			</View>
		))}
	</View>
)

/** Each palette as a strip from the paint shop. */
export const Palettes = ({ of }: { readonly of: readonly Palette[] }) =>
	of.map((palette, place) => (
		<View key={palette.key} wrap={false} style={{ marginTop: place === 0 ? 0 : 12 }}>
			<Text style={sheet.h2}>{palette.name}</Text>
			{palette.at === null ? null : <Text style={[sheet.soft, { marginBottom: 5 }]}>{palette.at}</Text>}
			<Strip of={palette} />
		</View>
	))

type Pot = ProposalView['pots'][number]

const wordsIn = ({ names, words, layers }: Pot) =>
	[names, words, ...layers.map((layer) => layer.words)].reduce((sum, text) => sum + text.length, 0)

const PotView = ({ of }: { readonly of: Pot }) => (
	<View style={{ marginBottom: 12 }} wrap={wordsIn(of) > most}>
		<Text style={sheet.bold}>{of.names}</Text>
		<Text style={[sheet.soft, { marginBottom: 4 }]}>{of.words}</Text>
		{of.layers.map(({ role, place, words }) => (
			<View key={role} style={sheet.ruled}>
				<Text style={sheet.side}>{place}</Text>
				<Text style={sheet.main}>{words}</Text>
			</View>
		))}
	</View>
)

/** What is in each pot, layer by layer; pots that hold the same once. The title is never parted from the first. */
export function Pots({ of: [first, ...rest] }: { readonly of: readonly Pot[] }) {
	if (first === undefined) return null
	return (
		<View>
			<View wrap={wordsIn(first) > most}>
				<Text style={sheet.h2}>What is in each pot</Text>
				<PotView of={first} />
			</View>
			{rest.map((pot) => (
				<PotView key={pot.key} of={pot} />
			))}
		</View>
	)
}

/** What was added. */
export const Extras = ({ of }: { readonly of: ProposalView['extras'] }) =>
	of.length === 0 ? null : (
		<View>
			<Text style={sheet.h2} minPresenceAhead={50}>
				Extras
			</Text>
			{of.map(({ key, name, words }) => (
				<View key={key} style={sheet.ruled} wrap={words.length > most}>
					<Text style={sheet.side}>{name}</Text>
					<Text style={sheet.main}>{words}</Text>
				</View>
			))}
		</View>
	)
