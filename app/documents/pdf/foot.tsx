import { Text, View } from '@react-pdf/renderer'
import { footTop, type Paper, sheet } from './paper'

type Props = { readonly says: string; readonly paper: Paper }

/** What every page repeats: one line, so nothing in it may be as long as a name. */
export const Foot = ({ says, paper }: Props) => (
	<View fixed style={[sheet.foot, { top: footTop[paper] }]}>
		<Text>{says}</Text>
		<Text render={({ pageNumber, totalPages }) => `${pageNumber} of ${totalPages}`} />
	</View>
)
