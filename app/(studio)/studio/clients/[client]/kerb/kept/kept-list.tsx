import type { Entry } from './entry'
import { clientPath } from './paths'

type Props = {
	/** All that is kept beside what stands in the form. */
	readonly entries: readonly Entry[]
	readonly client: string
	readonly onTake: (entry: Entry) => void
	readonly onDrop: (id: string) => void
}

const says: Readonly<Record<Entry['state'], string>> = {
	'being written': 'Kept on this phone, not finished.',
	waiting: 'Kept on this phone, not sent yet.',
	refused: 'Kept on this phone: something in it needs another look.',
}
const takes = { 'being written': 'Go on with it', refused: 'Put it right' } as const

/** What is kept on this phone and is not with the studio yet; let go of by hand, with a second word. */
export function KeptList({ entries, client, onTake, onDrop }: Props) {
	if (entries.length === 0) return null
	return (
		<section className="mt-5" aria-labelledby="kept">
			<h2 id="kept" className="text-lg">
				On this phone
			</h2>
			<p className="text-soft">
				It stays here when this page is closed, and goes when this page is open and there is reception. Signing out lets
				go of it.
			</p>
			<ul className="mt-1 border-t border-line">
				{entries.map((entry) => (
					<li key={entry.id} className="border-b border-line py-2">
						<b className="wrap-anywhere">
							{entry.client === client ? entry.title : `${entry.clientName}: ${entry.title}`}
						</b>
						<span className="block text-soft">{says[entry.state]}</span>
						{'form' in entry.errors && <span className="block font-semibold text-warn">{entry.errors.form}</span>}
						<div className="flex flex-wrap items-center gap-x-6">
							{entry.state !== 'waiting' &&
								(entry.client === client ? (
									<button type="button" className="does" onClick={() => onTake(entry)}>
										{takes[entry.state]}
									</button>
								) : (
									<a className="does inline-flex items-center" href={clientPath(entry.client)}>
										{takes[entry.state]}
									</a>
								))}
							<details>
								<summary className="does inline-flex items-center">Discard it</summary>
								<button type="button" className="act" onClick={() => onDrop(entry.id)}>
									Discard it for good<span className="sr-only">: {entry.title}</span>
								</button>
							</details>
						</div>
					</li>
				))}
			</ul>
		</section>
	)
}
