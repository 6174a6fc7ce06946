import { Image, Text, View } from '@react-pdf/renderer'
import { type Paper, sheet, sizes } from '../paper'
import { frame } from './scenes'
import type { ProposalView } from './view'

type Picture = ProposalView['pictures'][number]

const Drawn = ({ of: { jpeg }, width }: { readonly of: Picture; readonly width: number }) => (
	<Image src={{ data: jpeg, format: 'jpg' }} style={{ width, height: width / frame.ratio }} cache={false} />
)

const Caption = ({ of: { caption } }: { readonly of: Picture }) => (
	<Text style={[sheet.soft, { marginTop: 5, fontSize: 8 }]}>
		{caption}. A drawing, to scale; natural material varies.
	</Text>
)

/** The first wall, as wide as the paper and up to its edge. */
export const Hero = ({ of, paper }: { readonly of: Picture; readonly paper: Paper }) => (
	<View style={{ marginTop: -sheet.page.paddingTop }}>
		<View style={{ marginHorizontal: -sheet.page.paddingHorizontal }}>
			<Drawn of={of} width={sizes[paper].width} />
		</View>
		<Caption of={of} />
	</View>
)

/** The evening, and the other walls. */
export const Others = ({ of, paper }: { readonly of: readonly Picture[]; readonly paper: Paper }) =>
	of.map((each) => (
		<View key={each.caption} style={{ marginTop: 18 }} wrap={false}>
			<Drawn of={each} width={sizes[paper].width - 2 * sheet.page.paddingHorizontal} />
			<Caption of={each} />
		</View>
	))
