'use client'
import { useMemo, useState } from 'react'
import type { DraftText } from '@/lib/forms/draft-form'
import { publishWords } from '@/lib/proposal/desk/publish-words'
import { stopsOf } from '@/lib/proposal/desk/stops'
import type { Problem } from '@/lib/proposal/problem'
import { isDay } from '@/lib/units/day'
import { Containers } from './containers'
import { firstLook } from './design/looking'
import { useOptions } from './design/use-options'
import { Extras } from './extras'
import { Head } from './head'
import { type Known, namesOf } from './known'
import { Options } from './option/options'
import { BothTexts } from './publish/both-texts'
import { PricePanel } from './publish/price-panel'
import { SaveAndPublish } from './publish/save-and-publish'
import { WayThere } from './publish/way-there'
import { RemovalOf, useRemovals } from './removal/use-removal'
import { useFocus } from './state/use-focus'
import { usePriced } from './state/use-priced'
import { useSaving } from './state/use-saving'

type Props = {
	readonly proposal: string
	readonly version: number
	readonly draft: DraftText
	/** What stops the draft as it was kept. */
	readonly problems: readonly Problem[]
	readonly known: Known
	readonly clientPage: string
	readonly mayPublish: boolean
}

/** The desk itself: what is typed stays here through every error until it is saved. */
export function Editor({ proposal, version: first, draft: saved, problems, known, clientPage, mayPublish }: Props) {
	const base = `/studio/proposal/${proposal}`
	const { draft, saving, isUnsaved, save, change, take } = useSaving(`${base}/save`, { version: first, draft: saved })
	const [look, setLook] = useState(firstLook)
	const priced = usePriced(`${base}/price`, draft, look.measured)
	const names = useMemo(() => namesOf(known), [known])
	const goTo = useFocus()
	const { removal, replace, forget, said } = useRemovals({ draft, change, names, goTo })
	const design = useOptions({ base, draft, change, replace, goTo })
	const { options, agreement } = draft
	const called = new Map(options.map(({ key, name }) => [key, name]))
	const publishing = publishWords({
		recipients: known.recipients,
		answerBy: isDay(draft.answerBy) ? draft.answerBy : null,
		options: priced.desk?.options.map((each) => ({ ...each, name: called.get(each.key) ?? '' })) ?? [],
	})
	const stops = stopsOf(draft, { errors: priced.errors, problems: priced.desk?.problems ?? problems, names })
	return (
		<RemovalOf value={removal}>
			<p role="status" className="sr-only">
				{said}
			</p>
			<div className="mt-6 grid gap-x-10 gap-y-8 lg:grid-cols-[1fr_22rem]">
				<div className={`seen-${look.eyes}`}>
					{saving.is === 'saved elsewhere' && (
						<BothTexts
							mine={draft}
							theirs={saving.theirs}
							names={names}
							onKeepMine={() => {
								goTo('title')
								void save(saving.version)
							}}
							onTakeTheirs={() => {
								goTo('title')
								forget()
								take(saving.theirs, saving.version)
							}}
						/>
					)}
					<WayThere stops={stops} mayPublish={mayPublish} />
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
					<Options
						draft={draft}
						onChange={(next) => change({ ...draft, options: next })}
						onReplace={(option, pots) => replace(draft, option, pots)}
						errors={priced.errors}
						known={known}
						desk={priced.desk}
						looking={[look, setLook]}
						design={design}
					/>
					<Extras
						value={draft.extras}
						onChange={(extras) => change({ ...draft, extras: [...extras] })}
						errors={priced.errors}
						path="extras"
						known={known}
						findOthers={design.findOthers}
					/>
				</div>
				<div className="lg:sticky lg:top-4 lg:max-h-[calc(100vh-2rem)] lg:self-start lg:overflow-y-auto lg:px-1">
					<PricePanel desk={priced.desk} isBehind={priced.isBehind} />
					<SaveAndPublish
						proposal={proposal}
						saving={saving}
						stops={stops}
						recipients={known.recipients}
						clientPage={clientPage}
						mayPublish={mayPublish}
						isUnsaved={isUnsaved}
						publishing={publishing}
						onSave={save}
					/>
				</div>
			</div>
		</RemovalOf>
	)
}
