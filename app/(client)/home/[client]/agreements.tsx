import type { AgreementLine } from '@/lib/agreement/signing/page'
import { agreementInAWord } from '@/lib/agreement/told'
import { days, fullDay, longDay } from '@/lib/format/day'
import { type Day, daysBetween } from '@/lib/units/day'

type ToSign = { readonly line: AgreementLine; readonly today: Day; readonly maySign: boolean }

/** The agreement that waits for a signature: before all else. */
export function ToSign({ line: { agreement, from, to, signBy }, today, maySign }: ToSign) {
	const left = daysBetween(today, signBy)
	return (
		<section className="said mt-8" aria-label="Agreement to sign">
			<h2 className="text-3xl">Your agreement</h2>
			<p className="mt-2 text-lg">
				From {fullDay(from)} to {fullDay(to)}.
			</p>
			{maySign && (
				<p className="mt-1 text-lg font-semibold">
					Sign by {longDay(signBy)}
					{left >= 0 && `: ${left === 0 ? 'that is today' : `${days(left)} left`}`}
				</p>
			)}
			<p className="mt-5">
				<a className="act first" href={`/agreement/${agreement}`}>
					{maySign ? 'Read and sign' : 'Read the agreement'}
				</a>
			</p>
		</section>
	)
}

/** Every other agreement, with how it stands. */
export function Agreements({ lines }: { readonly lines: readonly AgreementLine[] }) {
	if (lines.length === 0) return null
	return (
		<section className="mt-14" aria-labelledby="agreements">
			<h2 id="agreements" className="text-2xl">
				Agreements
			</h2>
			<ul className="mt-3 border-t-2 border-ink">
				{lines.map(({ agreement, from, to, state }) => (
					<li key={agreement} className="border-b border-line">
						<a href={`/agreement/${agreement}`} className="block py-3 no-underline">
							<b className="font-semibold underline">
								{fullDay(from)} to {fullDay(to)}
							</b>
							<span className="block text-soft">{agreementInAWord(state)}</span>
						</a>
					</li>
				))}
			</ul>
		</section>
	)
}
