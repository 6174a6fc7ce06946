import type { ReactNode } from 'react'

/** A page before the door: the studio's name and one thing to do. */
export function PublicFrame({ studio, children }: { readonly studio: string; readonly children: ReactNode }) {
	return (
		<div className="mx-auto flex min-h-screen max-w-xl flex-col px-5">
			<header className="py-5 font-bold">{studio}</header>
			<main id="main" className="grow pt-[8vh] pb-20">
				{children}
			</main>
			<footer className="border-t border-line py-6 text-sm text-soft">
				<p>Questions? Answer any mail from {studio}.</p>
			</footer>
		</div>
	)
}
