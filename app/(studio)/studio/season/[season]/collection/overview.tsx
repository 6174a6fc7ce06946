import { Strip } from '@/app/ui/offer/palettes/strip'
import { list, numberWord } from '@/lib/format/words'
import type { Attempt } from '@/lib/forms/read'
import { mostDesigns, mostExtras } from '@/lib/season/collection/collection'
import type { CollectionPage } from '@/lib/season/collection/pages'
import { WordsForm } from './words-form'

type Props = { readonly page: CollectionPage; readonly attempt: Attempt; readonly isSaved: boolean }

const inWords = (count: number, one: string) => `${numberWord(count)} ${one}${count === 1 ? '' : 's'}`

/** The whole collection at a glance: designs as strips, extras, the letter, and what has to be mended first. */
export function Overview({ page, attempt, isSaved }: Props) {
	const { season, collection, problems, standIns } = page
	const { designs, extras } = collection
	const here = `/studio/season/${season.id}`
	return (
		<>
			<div className="mt-1 grid items-end gap-x-12 gap-y-3 lg:grid-cols-2">
				<h1 className="text-4xl font-extrabold tracking-tight">The collection</h1>
				<p className="text-lg">
					{designs.length === 0
						? 'House designs for the season, made once and applied to many clients.'
						: `${inWords(designs.length, 'house design')}, to grow to every client’s containers and hold against their wall.`}
				</p>
			</div>
			{isSaved && <p className="said mt-5">Saved.</p>}
			{problems.length > 0 ? (
				<section className="said mt-5" aria-label="Before it can be applied">
					<p className="font-semibold">Before it can be applied to anybody:</p>
					<ul className="mt-1">
						{problems.map(({ at, says }) => (
							<li key={`${at} ${says}`}>{says}</li>
						))}
					</ul>
				</section>
			) : (
				<p className="mt-5">
					<a href={`${here}/apply`} className="act first inline-flex items-center">
						Apply it to clients
					</a>
				</p>
			)}
			{standIns.length > 0 && <p className="said mt-5">{standIns.join(' ')}</p>}
			<h2 className="mt-10 text-xl">Designs</h2>
			<ul className="mt-2 border-t border-line">
				{designs.map((design) => (
					<li key={design.key} className="grid gap-x-8 gap-y-2 border-b border-line py-4 sm:grid-cols-[16rem_1fr]">
						<div>
							<a href={`${here}/collection?design=${design.key}`} className="name text-base">
								{design.name || 'A design without a name'}
							</a>
							<p className="mt-1 text-sm text-soft">{recipeWords(page, design)}</p>
						</div>
						<div className="max-w-xl">
							<Strip palette={design.palette.map((chip) => ({ ...chip, echoes: '' }))} />
						</div>
					</li>
				))}
			</ul>
			{designs.length < mostDesigns && (
				<a href={`${here}/collection?design=new`} className="does mt-2 inline-block">
					Add a design
				</a>
			)}
			<h2 className="mt-10 text-xl">Extras</h2>
			<p className="text-soft">Offered with every design, at each place that has a container.</p>
			<ul className="mt-2 max-w-3xl border-t border-line">
				{extras.map(({ key, name, words }) => (
					<li key={key} className="border-b border-line py-2">
						<a href={`${here}/collection?extra=${key}`} className="name text-base">
							{name}
						</a>
						<p className="text-soft">{words}</p>
					</li>
				))}
			</ul>
			{extras.length < mostExtras && (
				<a href={`${here}/collection?extra=new`} className="does mt-2 inline-block">
					Add an extra
				</a>
			)}
			<WordsForm page={page} attempt={attempt} />
		</>
	)
}

function recipeWords(
	{ recipes }: CollectionPage,
	{ recipes: chosen }: CollectionPage['collection']['designs'][number],
) {
	const called = (id: string | null) => recipes.find((each) => each.id === id)?.name
	const [pot, box, bowl] = [called(chosen.pot), called(chosen.box), called(chosen.bowl)]
	if (pot === undefined) return 'No recipe yet'
	const apart = [box && `in boxes “${box}”`, bowl && `in bowls “${bowl}”`].filter((each) => each !== undefined)
	return `The recipe “${pot}”${apart.length > 0 ? `, ${list(apart)}` : ''}`
}
