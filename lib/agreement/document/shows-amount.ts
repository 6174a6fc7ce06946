import { currencyCodes } from '../../format/money'

/** A sign of a currency, its code or its name, or figures to the cent: rather one text too many than an amount that is read. */
const amount = new RegExp(
	[
		String.raw`\p{Sc}`,
		String.raw`\b(?:${currencyCodes.join('|')})\b`,
		String.raw`\bkr\b`,
		String.raw`\d[.,]\d{2}(?!\d)`,
	]
		.concat(String.raw`\b(?:dollars?|cents?|euros?|pounds? sterling|francs?|kron(?:a|or|e|er))\b`)
		.join('|'),
	'iu',
)

/** Whether a text says what something costs. */
export const showsAmount = (text: string): boolean => amount.test(text)
