import { Text, View } from '@react-pdf/renderer'
import type { Fact } from '@/lib/money/words/sheet'
import { sheet } from './paper'

/** Labels on the left, what is so on the right; the first below a strong line. */
export const Facts = ({ of }: { readonly of: readonly Fact[] }) => (
	<View style={{ marginTop: 26 }}>
		{of.map(({ label, value }, place) => (
			<View key={label} style={[sheet.ruled, place === 0 ? sheet.strong : {}]}>
				<Text style={[sheet.side, sheet.bold]}>{label}</Text>
				<Text style={sheet.main}>{value}</Text>
			</View>
		))}
	</View>
)
