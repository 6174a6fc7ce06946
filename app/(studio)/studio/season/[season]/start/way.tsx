import { v7 } from 'uuid'
import { startFrom } from './actions'

type Props = {
	readonly client: string
	readonly season: string
	readonly from: 'earlier' | 'collection' | 'another' | 'recipe'
	readonly title: string
	readonly says: string
	readonly label: string
	readonly choices: readonly { readonly value: string; readonly label: string }[]
	/** What stands here where there is nothing to choose. */
	readonly none: string
	readonly does: string
}

/** One thing to start from: a choice and its button. */
export function Way({ client, season, from, title, says, label, choices, none, does }: Props) {
	return (
		<form action={startFrom} className="mt-6 border-t border-line pt-4">
			<h2 className="text-xl">{title}</h2>
			{choices.length === 0 ? (
				<p className="text-soft">{none}</p>
			) : (
				<>
					<p className="text-soft">{says}</p>
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="client" value={client} />
					<input type="hidden" name="season" value={season} />
					<input type="hidden" name="from" value={from} />
					<label htmlFor={`which-${from}`} className="mt-3 block font-semibold">
						{label}
					</label>
					<div className="mt-1.5 flex flex-wrap gap-3">
						<select id={`which-${from}`} name="which" className="box min-w-0 grow basis-64">
							{choices.map((choice) => (
								<option key={choice.value} value={choice.value}>
									{choice.label}
								</option>
							))}
						</select>
						<button type="submit" className="act">
							{does}
						</button>
					</div>
				</>
			)}
		</form>
	)
}
