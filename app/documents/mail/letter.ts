import type { Cover } from '@/lib/proposal/offer/cover'
import type { Drawings } from './drawings'

export type Rows = readonly (readonly [label: string, value: string])[]

/** A mail before it is dressed: the text and the HTML are made from the same words. */
export type Letter = {
	readonly subject: string
	readonly greeting: string
	readonly paragraphs: readonly string[]
	/** What heads the HTML. */
	readonly cover?: Cover
	/** What the HTML shows to scale; the text does without. */
	readonly drawings?: Drawings | undefined
	/** Colours by name, shown as a strip. */
	readonly strip?: readonly { readonly name: string; readonly hex: string }[]
	readonly rows?: Rows
	/** What it costs, line by line. */
	readonly prices?: Rows
	/** A code to type, set large. */
	readonly code?: string
	/** The one thing to do. */
	readonly action: { readonly label: string; readonly href: string }
	readonly small: string
	readonly studio: string
}

function table(rows: Rows): string {
	const width = Math.max(0, ...rows.map(([label]) => label.length))
	return rows.map(([label, value]) => `${`${label}:`.padEnd(width + 2)}${value}`).join('\n')
}

/** The plain text of a letter. */
export function letterText(letter: Letter): string {
	const { greeting, paragraphs, rows = [], prices = [], code, action, small, studio } = letter
	const parts = [
		greeting,
		...paragraphs,
		table(rows),
		table(prices),
		code ?? '',
		`${action.label}:\n${action.href}`,
		studio,
		`-- \n${small}`,
	]
	return `${parts.filter((part) => part !== '').join('\n\n')}\n`
}
