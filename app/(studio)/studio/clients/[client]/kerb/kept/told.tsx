import { list } from '@/lib/format/words'
import type { Entry } from './entry'
import { clientPath } from './paths'
import type { Reach, SentEntry } from './use-kept'

type Props = {
	readonly client: string
	readonly waiting: readonly Entry[]
	readonly sent: readonly SentEntry[]
	readonly reach: Reach
	/** Something stands in the form that is kept and not sent. */
	readonly isWriting: boolean
}

const titles = (entries: readonly Entry[]) => list(entries.map(({ title }) => title))

function words({ waiting, sent, reach, isWriting }: Props): string {
	if (reach === 'keeps nothing') return 'This browser keeps nothing: send it while there is reception.'
	if (waiting.length > 0 && reach === 'sending') return `Sending ${titles(waiting)}…`
	if (waiting.length > 0) return `Kept on this phone, not sent yet: ${titles(waiting)}.`
	if (isWriting) return 'Kept on this phone as you write, not sent yet.'
	return sent.length > 0 ? `Sent: ${titles(sent)}.` : ''
}

/** Where what was written down is now: on this phone, or with the studio. */
export function Told(props: Props) {
	return (
		<p role="status" className="line-clamp-3 min-h-5 text-sm font-semibold wrap-anywhere">
			{words(props)}{' '}
			{props.reach === 'signed out' && props.waiting.length > 0 && (
				<a href={`/sign-in?${new URLSearchParams({ to: clientPath(props.client) })}`}>Sign in again to send it</a>
			)}
		</p>
	)
}
