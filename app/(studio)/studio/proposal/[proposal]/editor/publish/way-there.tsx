'use client'
import type { Stop } from '@/lib/proposal/desk/stops'
import { publishId } from './save-and-publish'
import { stopsInWords } from './stops'

type Props = { readonly stops: readonly Stop[]; readonly mayPublish: boolean }

/** On a narrow screen, where saving and publishing stand below everything: how things stand, and the way there. */
export function WayThere({ stops, mayPublish }: Props) {
	return (
		<p className="mb-6 border-y border-line lg:hidden">
			<a href={`#${publishId}`} className="does flex items-center justify-between gap-4 py-2">
				<span>Save and publish</span>
				{mayPublish && <span className="text-sm font-normal text-soft">{stopsInWords(stops)}</span>}
			</a>
		</p>
	)
}
