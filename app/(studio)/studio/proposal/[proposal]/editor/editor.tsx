'use client'
import { useMemo, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import { named } from '@/lib/forms/named'
import { type Field, fieldsOf, inWords } from '@/lib/proposal/desk/places-in'
import { publishWords } from '@/lib/proposal/desk/publish-words'
import { isDay } from '@/lib/units/day'
import { BothTexts } from './both-texts'
import { Does } from './box'
import { Containers } from './containers'
import { firstLook, Looking } from './design/looking'
import { mostOptions, useOptions } from './design/use-options'
import { Extras } from './extras'
import { Head } from './head'
import { freshKey, type Known, namesOf, replaced } from './known'
import { OptionFields } from './option/option'
import { PricePanel } from './price-panel'
import { SaveAndPublish } from './save-and-publish'
import { usePriced } from './use-priced'
import { useSaving } from './use-saving'

type Props = {
	readonly proposal: string
	readonly version: number
	readonly draft: DraftText
	readonly known: Known
	readonly mayPublish: boolean
}

/** What is wrong, after where it stands. */
const told = (at: Field | undefined, says: string) => named(at && inWords(at.named), says)

/** The desk itself: what is typed stays here through every error until it is saved. */
export function Editor({ proposal, version: first, draft: saved, known, mayPublish }: Props) {
	const base = `/studio/proposal/${proposal}`
	const { draft, saving, isUnsaved, save, change, take } = useSaving(`${base}/save`, { version: first, draft: saved })
	const [look, setLook] = useState(firstLook)
	const priced = usePriced(`${base}/price`, draft, look.measured)
	const { designing, putIn, proposeAll, findOthers, remove, note } = useOptions(base, draft, change)
	const { options, agreement } = draft
	const chosen = useMemo(
		() => known.containers.filter(({ id }) => draft.containers.some((each) => each.id === id)),
		[known.containers, draft.containers],
	)
	const names = useMemo(() => namesOf(known), [known])
	const called = new Map(options.map(({ key, name }) => [key, name]))
	const publishing = publishWords({
		recipients: known.recipients,
		answerBy: isDay(draft.answerBy) ? draft.answerBy : null,
		options: priced.desk?.options.map((each) => ({ ...each, name: called.get(each.key) ?? '' })) ?? [],
	})
	const wrong = [
		...Object.entries(priced.errors).map(([path, says]) => told(fieldsOf(draft, names).get(path), says)),
		...(priced.desk?.problems ?? []).map(({ says }) => says),
	]
	const setOptions = (next: DraftText['options']) => change({ ...draft, options: next })
	return (
		<div className="mt-6 grid gap-x-10 gap-y-8 lg:grid-cols-[1fr_22rem]">
			<div className={`seen-${look.eyes}`}>
				{saving.is === 'saved elsewhere' && (
					<BothTexts
						mine={draft}
						theirs={saving.theirs}
						names={names}
						onKeepMine={() => void save(saving.version)}
						onTakeTheirs={() => take(saving.theirs, saving.version)}
					/>
				)}
				<Head value={draft} onChange={change} errors={priced.errors} />
				<Containers
					value={draft.containers}
					onChange={(containers) => change({ ...draft, containers })}
					known={known}
					covered={agreement.is === 'fixed' ? agreement.containers : null}
					onCover={(containers) =>
						agreement.is === 'fixed' && change({ ...draft, agreement: { ...agreement, containers } })
					}
				/>
				<p className="mt-5 flex flex-wrap items-center gap-4">
					{options.length < mostOptions && (
						<button type="button" className="act" disabled={designing.isAsking} onClick={() => void proposeAll()}>
							Propose palettes for this wall
						</button>
					)}
					<span role="status" className="text-soft">
						{designing.isAsking ? 'Designing…' : designing.says}
					</span>
				</p>
				{options.length > 0 && <Looking value={look} onChange={setLook} />}
				{options.map((option, index) => (
					<OptionFields
						key={option.key}
						value={option}
						onChange={(next) => setOptions(replaced(options, index, next))}
						onRemove={() => remove(option.key)}
						onCopy={() =>
							options.length < mostOptions && setOptions([...options, { ...option, key: freshKey(options), name: '' }])
						}
						errors={priced.errors}
						path={`options.${index}`}
						known={known}
						number={index + 1}
						containers={chosen}
						hasSupplement={agreement.is === 'fixed'}
						desk={priced.desk?.options.find(({ key }) => key === option.key)}
						onGrow={(recipe) => void putIn(option.key, recipe)}
						findOthers={findOthers}
						onNote={(container, check, words) => note(option.key, container, check, words)}
					/>
				))}
				{options.length < mostOptions && (
					<p className="mt-4">
						<Does
							onClick={() =>
								setOptions([
									...options,
									{ key: freshKey(options), name: '', palette: [], pots: [], supplementCents: '0.00' },
								])
							}
						>
							Add a palette
						</Does>
					</p>
				)}
				<Extras
					value={draft.extras}
					onChange={(extras) => change({ ...draft, extras: [...extras] })}
					errors={priced.errors}
					path="extras"
					known={known}
					findOthers={findOthers}
				/>
			</div>
			<div className="lg:sticky lg:top-4 lg:max-h-[calc(100vh-2rem)] lg:self-start lg:overflow-y-auto lg:px-1">
				<PricePanel desk={priced.desk} isBehind={priced.isBehind} />
				<SaveAndPublish
					proposal={proposal}
					saving={saving}
					wrong={wrong}
					mayPublish={mayPublish}
					isUnsaved={isUnsaved}
					publishing={publishing}
					onSave={save}
				/>
			</div>
		</div>
	)
}
