import type { Metadata } from 'next'
import { redirect } from 'next/navigation'
import { signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { ClientFrame } from '@/app/ui/client-frame'
import { doors } from '@/db/clients/home'
import { studioName, whoIs } from '@/db/studio/studio'

export const metadata: Metadata = { title: 'Which door?' }

/** One door opens by itself; of several one is chosen. */
export default async function Doors() {
	const who = await signedIn('/home')
	if (who.is !== 'contact') hide(who)
	const open = await doors(who)
	const [only, ...more] = open
	if (only !== undefined && more.length === 0) redirect(`/home/${only.client}`)
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)}>
			<div className="mx-auto max-w-2xl px-5 pt-[10vh]">
				<h1 className="text-5xl tracking-tight">Which door?</h1>
				<ul className="mt-6 border-t-2 border-ink">
					{open.map(({ client, name }) => (
						<li key={client} className="border-b border-line">
							<a href={`/home/${client}`} className="block py-4 text-xl font-semibold">
								{name}
							</a>
						</li>
					))}
				</ul>
			</div>
		</ClientFrame>
	)
}
