import type { ReactNode } from 'react'
import type { LengthUnit } from '@/lib/format/length'
import { choiceQuery } from '@/lib/forms/read'
import type { OfferView } from '@/lib/proposal/offer/offer-view'
import { isOut, type State } from '@/lib/proposal/state'
import type { Hash } from '@/lib/record/hash'
import { AnswerBar } from './answer-bar'
import { BackToBefore } from './back-to-before'
import { Changes } from './changes'
import { chosenQuery, wholeQuery } from './chosen-query'
import type { Look } from './drawn'
import { Hero } from './hero'
import { ByPlace } from './palettes/by-place'
import { Palettes } from './palettes/palettes'
import { Pots } from './pots'
import { Price } from './price'
import { Yours } from './yours'

type Props = {
	readonly view: OfferView
	/** Where the page itself is: forms and links start from here. */
	readonly path: string
	/** The hash that an answer has to name; a preview has none. */
	readonly revision?: Hash
	readonly may: 'answer' | 'look' | 'preview'
	readonly state: State['is']
	/** An approval has been given: `view` shows what was chosen. */
	readonly isChosen?: boolean
	readonly told: ReactNode
	/** Address of the pictures, without a query. */
	readonly pictures: string
	readonly look: Look
	/** How the studio measures. */
	readonly lengths: LengthUnit
}

const bare = (hex: string) => hex.slice(1)

function withLook(path: string, query: URLSearchParams, { hour, measure }: Look): string {
	if (hour !== null) query.set('hour', hour)
	if (measure !== 'none') query.set('measure', 'show')
	return `${path}?${query}`
}

/** The client's page, top to bottom: wall, letter, palettes, what is in each pot, extras, price, the answer. */
export function OfferPage({
	view,
	path,
	revision,
	may,
	state,
	isChosen = false,
	told,
	pictures,
	look,
	lengths,
}: Props) {
	const isOpen = state === 'waiting for an answer'
	const { offer, onWall, options, goesIn, answerBy } = view
	const accent = (onWall ?? options[0])?.palette[0]?.hex
	const wall = offer.places[0]?.wall.hex
	const tint = wall && accent && `${bare(wall)}-${bare(accent)}`
	return (
		<article data-tint={tint}>
			<BackToBefore />
			{tint && <link rel="stylesheet" href={`/tint/${tint}.css`} precedence="tint" />}
			<div>
				<Hero
					view={view}
					pictures={pictures}
					look={look}
					lengths={lengths}
					hrefOf={(to) => withLook(path, chosenQuery(view, revision), to)}
				/>
				<div className="band pb-8">
					<div className="mx-auto max-w-5xl px-5 pt-1 sm:px-8">
						{told}
						<h1 className="mt-8 max-w-2xl text-5xl font-extrabold tracking-tighter sm:text-7xl">{offer.title}</h1>
						<dl className="mt-6 flex flex-wrap gap-x-8 gap-y-2 text-lg">
							<Fact label="For" value={[offer.client, ...offer.places.map(({ address }) => address)].join(', ')} />
							{isOpen && <Fact label="Answer by" value={answerBy} />}
							{!isOut(state) && <Fact label="Goes in" value={goesIn} />}
						</dl>
					</div>
				</div>
				<div className="mx-auto max-w-5xl px-5 sm:px-8">
					<Changes changes={view.changes} number={offer.number} />
					<div className="letter mt-9 max-w-2xl whitespace-pre-line">{offer.letter}</div>
					<p className="mt-4 text-soft">
						{offer.signedBy}, {offer.studio}
					</p>
					<Palettes
						view={view}
						isOpen={isOpen}
						isChosen={isChosen}
						pictures={pictures}
						look={look}
						hrefOf={(option) => withLook(path, wholeQuery(view, option, revision), look)}
					/>
					{isOpen && may !== 'look' && <ByPlace view={view} pictures={pictures} look={look} />}
				</div>
			</div>
			<div className="mx-auto max-w-5xl px-5 sm:px-8">
				<Pots view={view} pictures={pictures} look={look} />
				<Yours view={view} path={path} revision={revision} look={look} isOpen={isOpen && may !== 'look'} />
				<Price price={view.price} />
				<Cautions cautions={view.cautions} />
				{isOpen && may !== 'look' && (
					<p className="no-print mt-14">
						Not this season?{' '}
						{may === 'answer' ? (
							<a href={`${path}/skip?${choiceQuery({ revision: revision ?? '' })}`}>Skip this season</a>
						) : (
							<span>Skip this season</span>
						)}
					</p>
				)}
			</div>
			{isOpen && <div className="no-print h-10" />}
			{isOpen && <AnswerBar view={view} path={path} revision={revision} may={may} />}
		</article>
	)
}

function Fact({ label, value }: { readonly label: string; readonly value: string }) {
	return (
		<div className="flex gap-2">
			<dt className="font-semibold">{label}</dt>
			<dd className="text-soft">{value}</dd>
		</div>
	)
}

function Cautions({ cautions }: { readonly cautions: readonly string[] }) {
	if (cautions.length === 0) return null
	return (
		<section className="mt-14 max-w-2xl" aria-labelledby="cautions">
			<h2 id="cautions" className="text-xl">
				Good to know
			</h2>
			<ul className="mt-2 list-disc ps-5 text-soft marker:text-[var(--mark)]">
				{cautions.map((words) => (
					<li key={words} className="mt-1">
						{words}
					</li>
				))}
				<li className="mt-1">Local codes and licensed practice come first.</li>
			</ul>
		</section>
	)
}
