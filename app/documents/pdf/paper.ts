import { StyleSheet } from '@react-pdf/renderer'
import type { LengthUnit } from '@/lib/format/length'

export type Paper = 'LETTER' | 'A4'

/** Letter where the studio measures in inches, A4 elsewhere. */
export const paperOf = (unit: LengthUnit): Paper => (unit === 'in' ? 'LETTER' : 'A4')

export const family = 'Doorsill'
export const ink = '#14241d'
export const soft = '#4b5a53'
export const line = '#cfd8d3'
export const warn = '#8f3a16'
/** The hue of each season, as on the site by day. */
export const hues = { spring: '#4b7619', summer: '#bd2045', autumn: '#955e0b', winter: '#5956b4' } as const

/** In points (1/72 in). */
export const sizes = { LETTER: { width: 612, height: 792 }, A4: { width: 595.28, height: 841.89 } } as const

/** Measured from the top: from the bottom, the renderer puts nothing on a page that sets the height of its lines. */
export const footTop = { LETTER: 792 - 50, A4: 842 - 50 } as const

/** Points (1/72 in): margins of an inch, hanging titles in a column of their own, a measure of some 70 signs. */
export const sheet = StyleSheet.create({
	page: {
		paddingTop: 58,
		paddingBottom: 74,
		paddingHorizontal: 64,
		fontFamily: family,
		fontSize: 9.2,
		lineHeight: 1.48,
		color: ink,
	},
	foot: {
		position: 'absolute',
		left: 64,
		right: 64,
		paddingTop: 7,
		borderTop: `0.6pt solid ${line}`,
		flexDirection: 'row',
		justifyContent: 'space-between',
		fontSize: 7,
		lineHeight: 1.3,
		color: soft,
	},
	unsigned: { position: 'absolute', top: 30, left: 64, right: 64, fontSize: 8.4, fontWeight: 'bold', color: warn },
	h1: { fontSize: 27, fontWeight: 'bold', lineHeight: 1.12, letterSpacing: -0.5 },
	h2: { fontSize: 13.5, fontWeight: 'bold', lineHeight: 1.2, marginTop: 22, marginBottom: 7 },
	bold: { fontWeight: 'bold' },
	soft: { color: soft },
	row: { flexDirection: 'row' },
	ruled: { flexDirection: 'row', borderTop: `0.6pt solid ${line}`, paddingVertical: 4.2 },
	side: { width: 128, paddingRight: 14 },
	main: { flex: 1 },
	right: { textAlign: 'right' },
	/** A column of amounts: the letters' figures are all of one width. */
	figure: { width: 92, textAlign: 'right' },
	/** The line above what counts. */
	strong: { borderTop: `1.4pt solid ${ink}` },
	total: { fontSize: 12, fontWeight: 'bold', paddingTop: 6 },
})
