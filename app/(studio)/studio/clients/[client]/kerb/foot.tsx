import { Told } from './kept/told'
import type { useKept } from './kept/use-kept'
import type { Of } from './writing/use-writing'

type Props = {
	readonly of: Of
	readonly isAlive: boolean
	readonly kept: Pick<ReturnType<typeof useKept>, 'entries' | 'sent' | 'reach' | 'sendAll'>
	readonly isWriting: boolean
}

/** What acts, under the thumb, and where what was written down is now. */
export function Foot({ of, isAlive, kept, isWriting }: Props) {
	const waiting = kept.entries.filter(({ state }) => state === 'waiting')
	return (
		<div className="kerb-foot mt-8">
			{isAlive && (
				<Told client={of.client} waiting={waiting} sent={kept.sent} reach={kept.reach} isWriting={isWriting} />
			)}
			<div className="mt-2 flex gap-2">
				<button type="submit" className="act first grow">
					Send to the studio
				</button>
				{waiting.length > 0 && kept.reach !== 'sending' && (
					<button type="button" className="act" onClick={() => void kept.sendAll()}>
						Try again
					</button>
				)}
			</div>
		</div>
	)
}
