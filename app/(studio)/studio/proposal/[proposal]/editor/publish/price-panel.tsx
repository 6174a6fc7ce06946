'use client'
import type { Desk, DeskOption } from '@/lib/proposal/desk/desk'

/** The client's quote and the studio's costing beside the draft, as the server computed them. */
export function PricePanel({ desk, isBehind }: { readonly desk: Desk | undefined; readonly isBehind: boolean }) {
	return (
		<section aria-label="Price" aria-busy={isBehind}>
			<h2 className="text-lg">Price and costing</h2>
			<p className="sr-only" aria-live="polite">
				{isBehind ? '' : desk?.options.map(({ quote }) => quote.total).join(', ')}
			</p>
			{desk?.options.map((option, index) => (
				<OptionPrice key={option.key} option={option} number={index + 1} />
			))}
			{desk !== undefined && desk.extras.length > 0 && (
				<div className="mt-5">
					<h3 className="font-semibold">Extras, each</h3>
					{desk.extras.map(({ name, price, cost }) => (
						<p key={name} className="flex justify-between gap-3 border-t border-line py-1 tabular-nums">
							<span>{name}</span>
							<span>
								{price} <span className="text-soft">costs {cost}</span>
							</span>
						</p>
					))}
				</div>
			)}
		</section>
	)
}

function OptionPrice({ option, number }: { readonly option: DeskOption; readonly number: number }) {
	const { quote, cost, margin, hours, mend, parts } = option
	return (
		<div className="mt-4 tabular-nums">
			<p className="flex items-baseline justify-between border-t-2 border-ink pt-1">
				<b>Palette {number}</b>
				<b className="text-xl">{quote.total}</b>
			</p>
			<p className="text-soft">
				margin <b className={mend.length > 0 ? 'text-warn' : ''}>{margin}</b>, cost {cost}, {hours}
			</p>
			{mend.map((words) => (
				<p key={words} className="text-sm text-warn">
					{words}
				</p>
			))}
			<details>
				<summary className="does inline-block text-sm">The client’s lines</summary>
				{quote.rows.map(({ label, amount }) => (
					<p key={label} className="flex justify-between gap-3 border-t border-line py-0.5 text-sm">
						<span>{label}</span>
						<span>{amount}</span>
					</p>
				))}
				<p className="text-sm text-soft">To be paid: {quote.due}.</p>
			</details>
			<details>
				<summary className="does inline-block text-sm">How it comes about</summary>
				{parts.map((part) => (
					<div key={`${part.name}`} className="mt-2 text-sm">
						<p className="flex justify-between gap-3 font-semibold">
							<span>{part.name}</span>
							<span>
								{part.price} <span className="font-normal text-soft">costs {part.cost}</span>
							</span>
						</p>
						{part.lines.map((line) => (
							<p key={`${line.what} ${line.how}`} className="border-t border-line py-0.5">
								<span className="flex justify-between gap-3">
									<span>{line.what}</span>
									<span className="whitespace-nowrap">
										{line.price} <span className="text-soft">{line.cost}</span>
									</span>
								</span>
								<span className="block text-soft">{line.how}</span>
							</p>
						))}
					</div>
				))}
			</details>
		</div>
	)
}
