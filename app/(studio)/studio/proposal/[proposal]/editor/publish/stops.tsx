'use client'
import { list } from '@/lib/format/words'
import type { Recipient } from '@/lib/proposal/desk/publish-words'
import type { Stop } from '@/lib/proposal/desk/stops'
import { boxId } from '../box'

type Props = {
	readonly stops: readonly Stop[]
	readonly recipients: readonly Recipient[]
	/** The card of the client, where what is missing is not on the desk. */
	readonly clientPage: string
}

/** What stops publishing, each a link to the box that it is about; that it is ready, and for whom, where nothing does. */
export function Stops({ stops, recipients, clientPage }: Props) {
	if (stops.length === 0)
		return (
			<>
				<h2 className="text-lg">Ready to be published</h2>
				<p className="mt-1">It will go to {list(recipients.map(({ name }) => name))}.</p>
			</>
		)
	return (
		<>
			<h2 className="text-lg">Before it can be published</h2>
			<ul className="mt-1 list-disc ps-5">
				{stops.map(({ says, field }) => (
					<li key={`${field} ${says}`}>
						<a className="wrap-anywhere" href={field === 'client' ? clientPage : `#${boxId(field)}`}>
							{says}
						</a>
					</li>
				))}
			</ul>
		</>
	)
}

/** How many things stop publishing, to be heard as it changes. */
export function stopsInWords(stops: readonly Stop[]): string {
	if (stops.length === 0) return 'Ready to be published.'
	return stops.length === 1 ? 'One thing stops publishing.' : `${stops.length} things stop publishing.`
}
