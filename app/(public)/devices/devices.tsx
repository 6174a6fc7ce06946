import { capital } from '@/lib/format/words'

type Session = {
	readonly handle: string
	readonly words: string
	readonly since: string
	readonly seen: string
	readonly isThis: boolean
}

function End({ handle, words, since, isThis }: Session) {
	return (
		<form method="post" action={isThis ? '/sign-out' : '/devices/end'}>
			{!isThis && <input type="hidden" name="session" value={handle} />}
			<button type="submit" className="does">
				{isThis ? 'Sign out here' : 'End it'}
				{!isThis && (
					<span className="sr-only">
						: {words}, signed in {since}
					</span>
				)}
			</button>
		</form>
	)
}

/** Where somebody is signed in, each to be ended, and all at once. */
export function Devices({ sessions, hasEnded }: { readonly sessions: readonly Session[]; readonly hasEnded: boolean }) {
	const named = sessions.map((session) => ({ ...session, words: session.words || 'a browser' }))
	return (
		<div className="max-w-2xl">
			<h1 className="text-4xl font-extrabold tracking-tight">Where you are signed in</h1>
			{hasEnded && (
				<p className="said mt-5" role="status">
					Ended. Whoever uses that browser has to sign in again.
				</p>
			)}
			<ul className="mt-6 border-t-2 border-ink">
				{named.map((session) => (
					<li
						key={session.handle}
						className="flex flex-wrap items-center justify-between gap-x-6 gap-y-1 border-b border-line py-3"
					>
						<div>
							<p className="font-semibold">
								{capital(session.words)}
								{session.isThis && <span className="font-normal">, the one before you</span>}
							</p>
							<p className="text-soft">Signed in {session.since}</p>
							<p className="text-soft">Last seen {session.seen}</p>
						</div>
						<End {...session} />
					</li>
				))}
			</ul>
			<form method="post" action="/devices/everywhere" className="mt-8">
				<p>
					One that you do not know? End it, or all of them, this one too. After that we write to you of the first
					sign-in with any browser.
				</p>
				<button type="submit" className="act mt-4">
					Sign out everywhere
				</button>
			</form>
		</div>
	)
}
