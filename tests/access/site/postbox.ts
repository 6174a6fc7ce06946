import type { AddressInfo } from 'node:net'
import { simpleParser } from 'mailparser'
import { SMTPServer } from 'smtp-server'

export type Letter = {
	readonly to: readonly string[]
	readonly subject: string
	readonly text: string
	readonly html: string
	/** As it came over the wire but for the pixels of pictures, and with its head decoded. */
	readonly raw: string
	readonly head: string
}

export type Postbox = {
	readonly url: string
	readonly letters: readonly Letter[]
	/** The `after`th letter to `address` about `subject`, when it comes. */
	readonly next: (address: string, subject: RegExp, after?: number) => Promise<Letter>
	readonly close: () => Promise<void>
}

/** What a picture's part holds (RFC 2045, section 6.8): no words, but figures by chance. */
const pixels = /(^Content-Type: image\/jpeg(?:.+\r\n)+\r\n)[\w+/=\r\n]+(?=^--)/gm

async function letterFrom(raw: Buffer, to: readonly string[]): Promise<Letter> {
	const { subject = '', text = '', html, headerLines } = await simpleParser(raw, { keepCidLinks: true })
	const head = headerLines.map(({ line }) => line).join('\n')
	return { to, subject, text, html: html || '', raw: raw.toString('utf8').replace(pixels, '$1'), head }
}

const patienceMs = 20_000

/** A real mail server on loopback that keeps every byte it is handed. */
export async function openPostbox(): Promise<Postbox> {
	const letters: Letter[] = []
	const server = new SMTPServer({
		authOptional: true,
		disabledCommands: ['STARTTLS', 'AUTH'],
		onData: (stream, { envelope }, done) => {
			const chunks: Buffer[] = []
			stream.on('data', (chunk: Buffer) => chunks.push(chunk))
			stream.on('end', () => {
				const to = envelope.rcptTo.map(({ address }) => address)
				letterFrom(Buffer.concat(chunks), to).then((letter) => {
					letters.push(letter)
					done()
				}, done)
			})
		},
	})
	// A site that is stopped in the middle of a mail breaks off: nothing of the test's.
	server.on('error', () => undefined)
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
	const at: AddressInfo | string | null = server.server.address()
	if (at === null || typeof at === 'string') throw new Error('The mail server has no port.')
	const next = async (address: string, subject: RegExp, after = 0): Promise<Letter> => {
		const until = Date.now() + patienceMs
		for (;;) {
			const found = letters.filter(({ to, subject: about }) => to.includes(address) && subject.test(about))[after]
			if (found !== undefined) return found
			if (Date.now() > until) throw new Error(`No mail to ${address} about ${subject}.`)
			await new Promise((resolve) => setTimeout(resolve, 20))
		}
	}
	const close = () => new Promise<void>((resolve) => server.close(() => resolve()))
	return { url: `smtp://127.0.0.1:${at.port}`, letters, next, close }
}

/** The link of a letter that leads to `path`. */
export function linkIn({ text }: Letter, path = '/'): string {
	const found = (text.match(/https?:\/\/\S+/g) ?? []).find((link) => new URL(link).pathname.startsWith(path))
	if (found === undefined) throw new Error(`No link to ${path} in: ${text}`)
	return found
}
