import { Text, View } from '@react-pdf/renderer'
import { sheet } from '../paper'

type Props = { readonly title: string; readonly from: string; readonly to: string; readonly address: string }

/** What it is and from whom on the left, for whom on the right. */
export const Head = ({ title, from, to, address }: Props) => (
	<View style={sheet.row}>
		<View style={{ flex: 1, paddingRight: 24 }}>
			<Text style={sheet.h1}>{title}</Text>
			<Text style={[sheet.soft, { marginTop: 6 }]}>{from}</Text>
		</View>
		<View style={{ width: 190, paddingTop: 7 }}>
			<Text style={sheet.bold}>{to}</Text>
			{address === '' ? null : <Text>{address}</Text>}
		</View>
	</View>
)
