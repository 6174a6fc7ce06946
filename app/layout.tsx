import '@fontsource-variable/bricolage-grotesque/opsz.css'
import '@fontsource-variable/newsreader/wght.css'
import './ui/styles/site.css'
import type { Metadata, Viewport } from 'next'
import { connection } from 'next/server'
import type { ReactNode } from 'react'
import { studioName } from '@/db/studio/studio'
import { viewer } from './server/sign-in/session'
import { env } from './server/start/env'

export async function generateMetadata(): Promise<Metadata> {
	const name = (await studioName(await viewer())) ?? 'Doorsill'
	return { title: { default: name, template: `%s · ${name}` }, robots: { index: false, follow: false } }
}

export const viewport: Viewport = {
	width: 'device-width',
	initialScale: 1,
	themeColor: [
		{ media: '(prefers-color-scheme: light)', color: '#f6fbf8' },
		{ media: '(prefers-color-scheme: dark)', color: '#0f1814' },
	],
}

/** Every page is made afresh: a page from a store could carry neither its nonce nor the right to see it. */
export default async function Layout({ children }: { children: ReactNode }) {
	await connection()
	return (
		<html lang="en">
			<body>
				<a href="#main" className="act first fixed start-2 -top-20 z-20 focus:top-2">
					To the content
				</a>
				{env().isDemo && (
					<p className="no-print bg-ink px-4 py-1 text-center text-sm text-ground">
						A demo: every name is invented. <a href="/demo/mail">Mail sent</a>
					</p>
				)}
				{children}
			</body>
		</html>
	)
}
