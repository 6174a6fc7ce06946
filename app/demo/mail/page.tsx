import type { Metadata } from 'next'
import { notFound } from 'next/navigation'
import { keptMails } from '@/app/server/mail/kept-mails'
import { env } from '@/app/server/start/env'
import { Linked } from './linked'
import { Pictures } from './pictures'

export const metadata: Metadata = { title: 'Mail that was sent' }

/** In a demo only: what the mail server would have carried, the newest first. */
export default async function Mail() {
	if (!env().isDemo || env().smtpUrl !== undefined) notFound()
	const mails = keptMails()
	return (
		<main id="main" className="mx-auto max-w-3xl px-5 py-8">
			<h1 className="text-4xl">Mail that was sent</h1>
			<p className="mt-2 text-soft">
				No mail leaves this machine: each one is a file in the data folder, and shown here.
			</p>
			{mails.length === 0 && <p className="mt-6">None yet.</p>}
			{mails.map(({ id, to, subject, text, cover, pictures }) => (
				<details key={id} className="mt-3 border-t border-line pt-2">
					<summary className="cursor-pointer py-2">
						<b>{subject}</b>
						<span className="block text-soft">
							to {to.name}, {to.address}
						</span>
					</summary>
					{cover && (
						<img src={`/demo/mail/${cover.file}`} alt={cover.alt} className="mb-4 block w-full" loading="lazy" />
					)}
					<Pictures pictures={pictures} />
					<Linked text={text} />
				</details>
			))}
		</main>
	)
}
