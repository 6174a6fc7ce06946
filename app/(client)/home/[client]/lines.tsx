import { Colours } from '@/app/ui/colours'
import { SeasonMark } from '@/app/ui/marks/season-mark'
import { StateMark } from '@/app/ui/marks/state-mark'
import type { HomeLine } from '@/db/clients/home'
import { daySpan, days, longDay } from '@/lib/format/day'
import type { MoneyFormat } from '@/lib/format/money'
import { capital } from '@/lib/format/words'
import { inAWord } from '@/lib/proposal/offer/told'
import { seasonName } from '@/lib/season/season'
import { type Day, daysBetween } from '@/lib/units/day'

export function Asked({
	line,
	today,
	money,
	mayAnswer,
}: {
	readonly line: HomeLine
	readonly today: Day
	readonly money: MoneyFormat
	readonly mayAnswer: boolean
}) {
	const { proposal, season, answerBy, window, paletteHexes, palette, totalCents } = line
	const left = answerBy === null ? 0 : daysBetween(today, answerBy)
	return (
		<section data-season={season.quarter} className="mt-8" aria-label={`Design for ${seasonName(season)}`}>
			<Colours hexes={paletteHexes} height={88} />
			<h2 className="mt-5 flex items-center gap-3 text-3xl">
				<SeasonMark quarter={season.quarter} size={30} />
				Your design for {seasonName(season)}
			</h2>
			<p className="mt-2 text-lg">
				{palette === '' ? 'Several palettes to choose from' : `“${palette}”`}
				{totalCents !== null && `, ${palette === '' ? 'from ' : ''}${money(totalCents)}`}. It goes in{' '}
				{daySpan(window.from, window.to)}.
			</p>
			{answerBy && (
				<p className="mt-1 text-lg font-semibold">
					Answer by {longDay(answerBy)}: {left === 0 ? 'that is today' : `${days(left)} left`}
				</p>
			)}
			<p className="mt-5">
				<a className="act first" href={`/proposal/${proposal}`}>
					{mayAnswer ? 'Look and answer' : 'Look at the design'}
				</a>
			</p>
		</section>
	)
}

/** What goes in next, of what was approved. */
export function Next({ line: { palette, window } }: { readonly line: HomeLine }) {
	return (
		<p className="mt-2 text-lg">
			Next: <b>{palette}</b> goes in {daySpan(window.from, window.to)}.
		</p>
	)
}

export function Season({ line, money }: { readonly line: HomeLine; readonly money: MoneyFormat }) {
	const { proposal, season, state, palette, paletteHexes, totalCents } = line
	const isAgreed = state === 'approved' || state === 'installed'
	return (
		<li data-season={season.quarter} className="border-b border-line">
			<a href={`/proposal/${proposal}`} className="flex items-center gap-4 py-3 no-underline">
				<SeasonMark quarter={season.quarter} />
				<span className="grow">
					<b className="font-semibold underline">{capital(seasonName(season))}</b>
					<span className="flex items-center gap-2 text-soft">
						<StateMark state={state} /> {inAWord[state]}
						{isAgreed && palette !== '' && ` · ${palette}`}
					</span>
				</span>
				<span className="flex shrink-0 flex-col items-end gap-x-4 gap-y-1 sm:flex-row sm:items-center">
					<span className="w-16">
						<Colours hexes={paletteHexes} height={28} />
					</span>
					<span className="text-end tabular-nums sm:w-24">
						{isAgreed && totalCents !== null ? money(totalCents) : ''}
					</span>
				</span>
			</a>
		</li>
	)
}
