import type { Metadata } from 'next'
import { signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { sessionToken } from '@/app/server/sign-in/session'
import { now } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { ownSessions } from '@/db/sign-in/own-sessions'
import { studioName, whoIs } from '@/db/studio/studio'
import { momentWords } from '@/lib/format/moment'
import { Devices } from './devices'

export const metadata: Metadata = { title: 'Where you are signed in' }

/** Everybody who is signed in sees where, in the frame of their own door. */
export default async function DevicesPage({ searchParams }: PageProps<'/devices'>) {
	const query = await searchParams
	const who = await signedIn('/devices', query)
	const own = await ownSessions(who, await sessionToken(), now())
	if (own === undefined) hide(who)
	const shown = own.sessions.map(({ since, seen, ...session }) => ({
		...session,
		since: momentWords(since, own.timeZone),
		seen: momentWords(seen, own.timeZone),
	}))
	const devices = <Devices sessions={shown} hasEnded={query.ended !== undefined} />
	const frame = { studio: (await studioName(who)) ?? '', who: await whoIs(who) }
	return who.is === 'staff' ? (
		<StudioFrame {...frame} isHelper={who.role === 'helper'}>
			{devices}
		</StudioFrame>
	) : (
		<ClientFrame {...frame}>
			<div className="mx-auto max-w-3xl px-5 pt-[6vh]">{devices}</div>
		</ClientFrame>
	)
}
