import type { AddressInfo } from 'node:net'
import { buffer } from 'node:stream/consumers'
import { type ParsedMail, simpleParser } from 'mailparser'
import { SMTPServer } from 'smtp-server'

/** What the server says to a recipient: a reply of its own (RFC 5321, section 4.2), or nothing when it takes the mail. */
type Reply = { readonly responseCode: number; readonly says: string } | null

export type MailServer = {
	readonly url: string
	/** Addresses whose mail was taken, in that order. */
	readonly taken: string[]
	/** Subjects of those mails. */
	readonly subjects: string[]
	/** Those mails, as a reader takes them apart, and as they came over the wire. */
	readonly mails: (ParsedMail & { readonly raw: Buffer })[]
	readonly tries: () => number
	readonly answer: (how: (address: string) => Reply) => void
	readonly close: () => Promise<void>
}

/** A real mail server on loopback that refuses whom it is told to. */
export async function openMailServer(): Promise<MailServer> {
	const taken: string[] = []
	const subjects: string[] = []
	const mails: MailServer['mails'] = []
	let tries = 0
	let how: (address: string) => Reply = () => null
	const server = new SMTPServer({
		authOptional: true,
		disabledCommands: ['STARTTLS', 'AUTH'],
		onRcptTo: ({ address }, _, done) => {
			tries += 1
			const reply = how(address)
			done(reply === null ? null : Object.assign(new Error(reply.says), { responseCode: reply.responseCode }))
		},
		onData: (stream, { envelope }, done) => {
			buffer(stream)
				.then(async (raw) => {
					const mail = await simpleParser(raw, { keepCidLinks: true })
					mails.push({ ...mail, raw })
					taken.push(...envelope.rcptTo.map(({ address }) => address))
					subjects.push(mail.subject ?? '')
					done()
				})
				.catch(done)
		},
	})
	server.on('error', () => undefined)
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
	const at: AddressInfo | string | null = server.server.address()
	if (at === null || typeof at === 'string') throw new Error('The mail server has no port.')
	return {
		url: `smtp://127.0.0.1:${at.port}`,
		taken,
		subjects,
		mails,
		tries: () => tries,
		answer: (next) => {
			how = next
		},
		close: () => new Promise<void>((resolve) => server.close(() => resolve())),
	}
}
