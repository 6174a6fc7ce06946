import type { AddressInfo } from 'node:net'
import { buffer } from 'node:stream/consumers'
import { type Attachment, type ParsedMail, simpleParser } from 'mailparser'
import { SMTPServer } from 'smtp-server'

export type Mail = {
	readonly from: string
	readonly to: string
	readonly subject: string
	readonly text: string
	readonly html: string
	readonly id: string
	readonly autoSubmitted: string
	/** Content-IDs of the pictures that came with it. */
	readonly pictures: readonly string[]
	/** What else is attached. */
	readonly attachments: number
	/** Bytes over the wire. */
	readonly weight: number
}

export type Mailbox = {
	readonly url: string
	readonly mails: readonly Mail[]
	/** The first mail to `address` whose subject matches, from the `after`th on; waits for it. */
	readonly next: (address: string, subject: RegExp, after?: number) => Promise<Mail>
	readonly close: () => Promise<void>
}

const isPicture = ({ contentType, contentDisposition }: Attachment) =>
	['image/jpeg', 'image/png'].includes(contentType) && contentDisposition === 'inline'

function plain(parsed: ParsedMail, weight: number): Mail {
	const to = [parsed.to ?? []].flat().flatMap(({ value }) => value)
	const { from, subject, text, html, messageId, headers, attachments } = parsed
	return {
		from: from?.value[0]?.name ?? '',
		to: to[0]?.address ?? '',
		subject: subject ?? '',
		text: text ?? '',
		html: html || '',
		id: messageId ?? '',
		autoSubmitted: String(headers.get('auto-submitted')),
		pictures: attachments.filter(isPicture).map(({ cid = '' }) => cid),
		attachments: attachments.filter((each) => !isPicture(each)).length,
		weight,
	}
}

const patienceMs = 20_000

/** A real mail server on loopback that keeps what it is handed. */
export async function openMailbox(): Promise<Mailbox> {
	const mails: Mail[] = []
	const server = new SMTPServer({
		authOptional: true,
		disabledCommands: ['STARTTLS', 'AUTH'],
		onData: (stream, _session, done) => {
			buffer(stream)
				.then(async (raw) => {
					mails.push(plain(await simpleParser(raw, { keepCidLinks: true }), raw.length))
					done()
				})
				.catch(done)
		},
	})
	// A story that ends stops its site in the middle of a mail, which the server would throw.
	server.on('error', () => undefined)
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
	const address: AddressInfo | string | null = server.server.address()
	if (address === null || typeof address === 'string') throw new Error('The mail server has no port.')
	const next = async (to: string, subject: RegExp, after = 0): Promise<Mail> => {
		const until = Date.now() + patienceMs
		for (;;) {
			const found = mails.filter((mail) => mail.to === to && subject.test(mail.subject))[after]
			if (found !== undefined) return found
			if (Date.now() > until)
				throw new Error(
					`No mail to ${to} about ${subject}: ${mails.map((mail) => `${mail.to} ${mail.subject}`).join('; ')}`,
				)
			await new Promise((resolve) => setTimeout(resolve, 50))
		}
	}
	return {
		url: `smtp://127.0.0.1:${address.port}`,
		mails,
		next,
		close: () => new Promise((resolve) => server.close(() => resolve())),
	}
}

/** The eight digits of a mail with a code, as they are to be typed. */
export function codeIn({ text }: Mail): string {
	const [code] = text.match(/\b\d{4} \d{4}\b/) ?? []
	if (code === undefined) throw new Error(`No code in: ${text}`)
	return code
}

/** The first link of a mail. */
export function linkIn({ text }: Mail): string {
	const [link] = text.match(/http:\/\/127\.0\.0\.1:\d+\/\S+/) ?? []
	if (link === undefined) throw new Error(`No link in: ${text}`)
	return link
}
