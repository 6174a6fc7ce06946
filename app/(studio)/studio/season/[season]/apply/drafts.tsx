import { Thumbnail } from '@/app/ui/studio/thumbnail'
import { list } from '@/lib/format/words'
import type { DraftFit } from '@/lib/season/collection/pages'

type Props = { readonly drafts: readonly DraftFit[] }

const isBad = ({ fits }: DraftFit) => fits.some(({ badly }) => badly.length > 0)

/** Where the first palette is drawn before the client's own wall. */
function pictureOf({ proposal, place, fits: [first] }: DraftFit): string | null {
	if (place === null || first === undefined) return null
	const query = new URLSearchParams({ place, option: first.option, cut: 'thumbnail' })
	return `/studio/proposal/${proposal}/preview/picture?${query}`
}

/** How the drafts stand: what fits badly and why, then what fits, a line each. */
export function Drafts({ drafts }: Props) {
	if (drafts.length === 0) return null
	const [bad, good] = [drafts.filter(isBad), drafts.filter((draft) => !isBad(draft))]
	return (
		<>
			{bad.length > 0 && (
				<section className="mt-12" aria-labelledby="badly">
					<h2 id="badly" className="text-xl">
						To look at again: {bad.length}
					</h2>
					<ul className="mt-2 border-t border-line">
						{bad.map((draft) => (
							<Bad key={draft.proposal} draft={draft} />
						))}
					</ul>
				</section>
			)}
			{good.length > 0 && (
				<section className="mt-12" aria-labelledby="well">
					<h2 id="well" className="text-xl">
						Fits as it is: {good.length}
					</h2>
					<ul className="mt-2 grid gap-x-10 border-t border-line lg:grid-cols-2">
						{good.map((draft) => (
							<li key={draft.proposal} className="flex items-center gap-3 border-b border-line py-1.5">
								<Drawn draft={draft} />
								<p className="min-w-0">
									<a href={`/studio/proposal/${draft.proposal}`} className="name">
										{draft.name}
									</a>{' '}
									<span className="text-soft">{list(draft.fits.map(({ name }) => name))}</span>
								</p>
							</li>
						))}
					</ul>
				</section>
			)}
		</>
	)
}

const Drawn = ({ draft }: { readonly draft: DraftFit }) => (
	<Thumbnail wall={draft.wall} hexes={draft.hexes} picture={pictureOf(draft)} />
)

function Bad({ draft }: { readonly draft: DraftFit }) {
	return (
		<li className="grid grid-cols-[3.5rem_1fr] gap-x-4 border-b border-line py-3">
			<Drawn draft={draft} />
			<div>
				<a href={`/studio/proposal/${draft.proposal}`} className="name text-base">
					{draft.name}
				</a>
				<dl className="mt-1 grid gap-x-8 gap-y-2 lg:grid-cols-2">
					{draft.fits.map(({ option, name, well, badly }) => (
						<div key={option}>
							<dt className="font-semibold">
								{name} {badly.length === 0 && <span className="font-normal text-soft">fits</span>}
							</dt>
							{well.length > 0 && <dd className="text-soft">{well.join(' ')}</dd>}
							{badly.map((says) => (
								<dd key={says}>{says}</dd>
							))}
						</div>
					))}
				</dl>
			</div>
		</li>
	)
}
