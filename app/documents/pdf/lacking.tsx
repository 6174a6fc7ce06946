import { Text } from '@react-pdf/renderer'
import { type Drawing, placeholder } from './drawing'
import { sheet } from './paper'

/** Said where a sign was replaced: after every word of the file was. */
export const Lacking = ({ drawing }: { readonly drawing: Drawing }) =>
	drawing.hasReplaced() ? (
		<Text style={[sheet.soft, { marginTop: 16, fontSize: 8 }]}>
			{placeholder} stands for a sign that the letters of this file lack. The page that it was taken from shows it.
		</Text>
	) : null
