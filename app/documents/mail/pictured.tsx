import { Column, Img, Row, Section, Text } from '@react-email/components'

/** A picture that goes with a mail, named there by its Content-ID (RFC 2392). */
export type Named = { readonly cid: string; readonly alt: string }
export type Pictured = Named & {
	readonly caption: string | null
	/** So many stand side by side. */
	readonly across: number
	/** Width over height. */
	readonly ratio: number
}

/** As wide as a mail is shown, in CSS pixels. */
export const mailWidth = 600

type Props = { readonly pictures: readonly Pictured[]; readonly words: { readonly [name: string]: string } }

/** `words` is the type of the caption, and of the description where a reader shows no pictures. */
export function Pictures({ pictures, words }: Props) {
	const across = pictures[0]?.across ?? 1
	const rows = Array.from({ length: Math.ceil(pictures.length / across) }, (_, row) =>
		pictures.slice(row * across, (row + 1) * across),
	)
	const width = Math.floor(mailWidth / across)
	return (
		<Section style={{ margin: '4px 0 20px' }}>
			{rows.map((row) => (
				<Row key={row[0]?.cid}>
					{row.map(({ cid, alt, caption, ratio }) => (
						<Column key={cid} width={width} style={{ padding: across > 1 ? '0 1px' : 0, verticalAlign: 'top' }}>
							<Img
								src={`cid:${cid}`}
								alt={alt}
								width={width}
								height={Math.round(width / ratio)}
								style={{ ...words, width: '100%', height: 'auto' }}
							/>
							{caption !== null && <Text style={{ ...words, margin: '6px 8px 10px' }}>{caption}</Text>}
						</Column>
					))}
				</Row>
			))}
		</Section>
	)
}
