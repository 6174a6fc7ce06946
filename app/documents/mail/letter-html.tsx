import {
	Body,
	Button,
	Column,
	Container,
	Head,
	Hr,
	Html,
	Link,
	Preview,
	Row,
	Section,
	Text,
} from '@react-email/components'
import { render } from '@react-email/render'
import { Heading } from './heading'
import type { Letter } from './letter'
import { mailWidth, type Named, type Pictured, Pictures } from './pictured'

/** Mail readers know no custom properties and no web fonts: a palette and a type of their own. */
const ink = '#14241d'
const soft = '#4b5a53'
const font = 'Verdana, Geneva, sans-serif'
const text = { color: ink, fontFamily: font, fontSize: '16px', lineHeight: '25px', margin: '0 0 16px' }
const small = { ...text, color: soft, fontSize: '13px', lineHeight: '20px' }

function Strip({ strip }: { strip: NonNullable<Letter['strip']> }) {
	return (
		<Row style={{ margin: '0 0 20px' }}>
			{strip.map(({ name, hex }) => (
				<Column key={`${name} ${hex}`} width={`${Math.floor(100 / strip.length)}%`} style={{ verticalAlign: 'top' }}>
					<div style={{ backgroundColor: hex, height: '44px', fontSize: '1px', lineHeight: '44px' }}>&nbsp;</div>
					<Text style={{ ...small, margin: '6px 6px 0 0' }}>{name}</Text>
				</Column>
			))}
		</Row>
	)
}

function Rows({ rows }: { rows: NonNullable<Letter['rows']> }) {
	return (
		<Section style={{ borderTop: `1px solid ${ink}`, margin: '0 0 20px' }}>
			{rows.map(([label, value]) => (
				<Row key={`${label} ${value}`} style={{ borderBottom: '1px solid #d5ddd8' }}>
					<Column
						style={{ ...text, margin: 0, padding: '8px 12px 8px 0', width: '38%', color: soft, verticalAlign: 'top' }}
					>
						{label}
					</Column>
					<Column style={{ ...text, margin: 0, padding: '8px 0', verticalAlign: 'top' }}>{value}</Column>
				</Row>
			))}
		</Section>
	)
}

/** The pictures that go with a letter, by name: what heads it, and its designs. */
export type Shown = { readonly cover?: Named | undefined; readonly pictures: readonly Pictured[] }
type Dress = Shown & { readonly letter: Letter }

function Dressed({ letter, cover, pictures }: Dress) {
	const { greeting, paragraphs, strip, rows, prices, code, action, studio } = letter
	const button = {
		backgroundColor: ink,
		color: '#f6faf7',
		padding: '14px 22px',
		fontFamily: font,
		fontSize: '16px',
		fontWeight: 700,
		borderRadius: '4px',
	}
	return (
		<Html lang="en">
			<Head>
				<meta name="color-scheme" content="light" />
			</Head>
			<Preview>{paragraphs[0] ?? ''}</Preview>
			<Body style={{ backgroundColor: '#eef4f0', margin: 0, padding: '24px 0' }}>
				<Container style={{ backgroundColor: '#fbfdfc', maxWidth: `${mailWidth}px` }}>
					{cover && <Heading cover={cover} words={small} />}
					<Section style={{ padding: '28px 28px 0' }}>
						<Text style={{ ...text, fontWeight: 700 }}>{studio}</Text>
						<Text style={text}>{greeting}</Text>
						{paragraphs.map((words) => (
							<Text key={words} style={{ ...text, whiteSpace: 'pre-line' }}>
								{words}
							</Text>
						))}
					</Section>
					{pictures.length > 0 && <Pictures pictures={pictures} words={small} />}
					<Section style={{ padding: '0 28px 20px' }}>
						{strip && <Strip strip={strip} />}
						{rows && <Rows rows={rows} />}
						{prices && <Rows rows={prices} />}
						{code && (
							<Text style={{ ...text, fontSize: '30px', lineHeight: '38px', letterSpacing: '4px', fontWeight: 700 }}>
								{code}
							</Text>
						)}
						<Button href={action.href} style={button}>
							{action.label}
						</Button>
						<Text style={{ ...small, margin: '16px 0 0' }}>
							Or open{' '}
							<Link href={action.href} style={{ color: soft, textDecoration: 'underline', wordBreak: 'break-all' }}>
								{action.href}
							</Link>
						</Text>
						<Hr style={{ borderColor: '#d5ddd8', margin: '24px 0 12px' }} />
						<Text style={{ ...small, margin: 0 }}>{letter.small}</Text>
					</Section>
				</Container>
			</Body>
		</Html>
	)
}

export const letterHtml = (letter: Letter, shown: Shown = { pictures: [] }): Promise<string> =>
	render(<Dressed letter={letter} {...shown} />)
