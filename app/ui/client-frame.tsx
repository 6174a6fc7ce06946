import type { ReactNode } from 'react'
import { capital } from '@/lib/format/words'
import type { Season } from '@/lib/season/season'
import { seasonName } from '@/lib/season/season'
import { SeasonMark } from './marks/season-mark'

type Props = {
	readonly studio: string
	readonly who: { readonly name: string; readonly address: string } | undefined
	readonly season?: Season | undefined
	readonly home?: string
	readonly children: ReactNode
}

/** What every page behind the client's door has: the studio's name, the season, and at the foot help and the way out. */
export function ClientFrame({ studio, who, season, home = '/', children }: Props) {
	return (
		<div data-season={season?.quarter} className="flex min-h-screen flex-col">
			<header className="flex items-center justify-between gap-4 px-5 py-3 sm:px-8">
				<a href={home} className="py-2 font-bold no-underline">
					{studio}
				</a>
				{season && (
					<p className="flex items-center gap-2 font-semibold text-season">
						<SeasonMark quarter={season.quarter} />
						{capital(seasonName(season))}
					</p>
				)}
			</header>
			<main id="main" className="grow">
				{children}
			</main>
			<footer className="no-print mt-20 border-t border-line px-5 py-6 text-sm text-soft sm:px-8">
				<p>Questions? Answer any mail from {studio}.</p>
				{who && <SignedIn name={who.name} address={who.address} />}
			</footer>
		</div>
	)
}

export function SignedIn({ name, address }: { name: string; address: string }) {
	return (
		<form method="post" action="/sign-out" className="mt-1 flex flex-wrap items-center gap-x-3">
			<p className="wrap-anywhere">
				Signed in as {name}, {address}
			</p>
			<button type="submit" className="does">
				Sign out
			</button>
			<a href="/devices" className="does inline-flex items-center">
				Where you are signed in
			</a>
		</form>
	)
}
