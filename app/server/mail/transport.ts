import 'server-only'
import { mkdirSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import nodemailer from 'nodemailer'
import { env } from '../start/env'
import type { AttachedCover } from './headed'
import type { Attached } from './pictures'

export type Shown = { readonly cover?: AttachedCover | undefined; readonly pictures: readonly Attached[] }

export type Sending = Shown & {
	readonly id: string
	readonly to: { readonly name: string; readonly address: string }
	readonly from: string
	readonly subject: string
	readonly text: string
	readonly html: string
}

const safe = { disableFileAccess: true, disableUrlAccess: true } as const

function attached({ cover, pictures }: Shown) {
	const inline = { contentDisposition: 'inline' } as const
	const designs = pictures.map(({ cid, content }, index) => {
		const filename = `design-${index + 1}.jpg`
		return { ...inline, cid, content, contentType: 'image/jpeg', filename }
	})
	if (cover === undefined) return designs
	const { cid, content } = cover
	return [{ ...inline, cid, content, contentType: 'image/png', filename: 'cover.png' }, ...designs]
}

function message({ id, to, from, subject, text, html, ...shown }: Sending) {
	return {
		messageId: `<${id}@${new URL(env().siteUrl).hostname}>`,
		from: { name: from, address: env().mailFrom },
		to: { name: to.name, address: to.address },
		subject,
		text,
		html,
		attachments: attached(shown),
		headers: { 'Auto-Submitted': 'auto-generated', 'X-Auto-Response-Suppress': 'All' },
	}
}

export const mailFolder = () => join(env().dataDir, 'mail')

/** Whole or not at all: a file half written has another name. */
function keep(name: string, content: string | Buffer): void {
	const file = join(mailFolder(), name)
	writeFileSync(`${file}.part`, content, { mode: 0o600 })
	renameSync(`${file}.part`, file)
}

async function toFile(sending: Sending): Promise<void> {
	mkdirSync(mailFolder(), { recursive: true, mode: 0o700 })
	const made = await nodemailer
		.createTransport({ streamTransport: true, buffer: true, ...safe })
		.sendMail(message(sending))
	if (!Buffer.isBuffer(made.message)) throw new Error('toFile: the mail was not made into a buffer')
	keep(`${sending.id}.eml`, made.message)
	const { id, to, subject, text, cover } = sending
	const pictures = sending.pictures.map(({ content, alt, caption }, index) => {
		const file = `${id}.${index + 1}.jpg`
		keep(file, content)
		return { file, alt, caption }
	})
	const file = `${id}.0.png`
	if (cover !== undefined) keep(file, cover.content)
	keep(`${id}.json`, JSON.stringify({ to, subject, text, pictures, ...(cover && { cover: { file, alt: cover.alt } }) }))
}

/** Hands a mail to the mail server; without one to a file in the data folder. @throws when it was not taken */
export async function deliver(sending: Sending): Promise<void> {
	const { smtpUrl } = env()
	if (smtpUrl === undefined) return toFile(sending)
	const transport = nodemailer.createTransport(smtpUrl, safe)
	try {
		await transport.sendMail(message(sending))
	} finally {
		transport.close()
	}
}
