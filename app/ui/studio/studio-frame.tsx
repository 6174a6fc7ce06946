import type { ReactNode } from 'react'
import { SignedIn } from '../client-frame'

const rooms = [
	{ href: '/studio', word: 'Season' },
	{ href: '/studio/clients', word: 'Clients' },
	{ href: '/studio/agreements', word: 'Agreements' },
	{ href: '/studio/recipes', word: 'Recipes' },
	{ href: '/studio/materials', word: 'Materials' },
	{ href: '/studio/install', word: 'To install' },
	{ href: '/studio/visits', word: 'Visits' },
	{ href: '/studio/money', word: 'Money' },
	{ href: '/studio/settings', word: 'Settings' },
] as const
export type Room = (typeof rooms)[number]['word']

type Props = {
	readonly studio: string
	readonly who: { readonly name: string; readonly address: string } | undefined
	/** Nothing where the page is no room of the studio. */
	readonly here?: Room
	readonly season?: string | undefined
	readonly isHelper?: boolean
	readonly children: ReactNode
}

/** A line of words, then the page: the studio's pages are a well-kept ledger. */
export function StudioFrame({ studio, who, here, season, isHelper = false, children }: Props) {
	const open = isHelper ? rooms.filter(({ word }) => word === 'To install' || word === 'Visits') : rooms
	return (
		<div data-season={season} className="mx-auto flex min-h-screen max-w-7xl flex-col px-5 text-[0.95rem] sm:px-8">
			<header className="no-print flex flex-wrap items-baseline gap-x-8 border-b border-line py-3">
				<p className="py-2 font-bold">{studio}</p>
				<nav aria-label="Studio" className="flex flex-wrap gap-x-5">
					{open.map(({ href, word }) => (
						<a
							key={word}
							href={href}
							aria-current={word === here ? 'page' : undefined}
							className={`py-2 no-underline hover:underline ${word === here ? 'font-bold' : 'text-soft'}`}
						>
							{word}
						</a>
					))}
				</nav>
			</header>
			<main id="main" className="grow pt-7">
				{children}
			</main>
			<footer className="no-print mt-16 border-t border-line py-5 text-sm text-soft">
				{who && <SignedIn name={who.name} address={who.address} />}
			</footer>
		</div>
	)
}
