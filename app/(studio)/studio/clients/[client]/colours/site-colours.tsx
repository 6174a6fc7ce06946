import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { one } from '@/app/ui/studio/settings-fields'
import { spotWords } from '@/lib/colour/site/spot-words'
import type { Attempt } from '@/lib/forms/read'
import { dropColour, mergeColours, renameColour } from './actions'

type Colour = {
	readonly id: string
	readonly name: string
	readonly hex: string
	readonly side: string
	/** Where in its photo it was found; null of one that was added by eye. */
	readonly spotX: number | null
	readonly spotY: number | null
}
type Props = { readonly client: string; readonly colours: readonly Colour[]; readonly attempt: Attempt }

const seenWords = ({ side, spotX: x, spotY: y }: Colour): string =>
	x === null || y === null ? side : `${side}, seen ${spotWords({ x, y })} in its photo`

/** The building's colours: each may be renamed, made one with another, or dropped. */
export function SiteColours({ client, colours, attempt }: Props) {
	return (
		<>
			<ErrorSummary errors={attempt.errors} />
			<ul>
				{colours.map((colour) => (
					<li key={colour.id} className="flex flex-wrap items-baseline gap-x-3 border-t border-line py-1">
						<span className="grow">
							<svg width="18" height="18" aria-hidden="true" className="me-1.5 inline">
								<rect width="18" height="18" fill={colour.hex} />
							</svg>
							{colour.name} <span className="text-soft">{seenWords(colour)}</span>
						</span>
						<Change
							client={client}
							colour={colour}
							others={colours.filter(({ id }) => id !== colour.id)}
							typed={attempt.typed.colour === colour.id ? attempt.typed : undefined}
						/>
						<form action={dropColour}>
							<Which client={client} colour={colour.id} />
							<button type="submit" className="does">
								Drop<span className="sr-only"> {colour.name}</span>
							</button>
						</form>
					</li>
				))}
			</ul>
		</>
	)
}

const Which = ({ client, colour }: { readonly client: string; readonly colour: string }) => (
	<>
		<input type="hidden" name="once" value={v7()} />
		<input type="hidden" name="client" value={client} />
		<input type="hidden" name="colour" value={colour} />
	</>
)

type ChangeProps = {
	readonly client: string
	readonly colour: Colour
	readonly others: readonly Colour[]
	/** What went wrong with it; undefined where nothing did. */
	readonly typed: Attempt['typed'] | undefined
}

function Change({ client, colour: { id, name }, others, typed }: ChangeProps) {
	return (
		<details className="open:order-last open:basis-full" open={typed !== undefined}>
			<summary className="does inline-block">
				Change<span className="sr-only"> {name}</span>
			</summary>
			<div className="flex flex-wrap items-end gap-x-6 gap-y-2 pb-2">
				<form action={renameColour} className="flex items-end gap-2">
					<Which client={client} colour={id} />
					<label>
						<span className="block text-sm font-semibold">
							Its name<span className="sr-only">, {name}</span>
						</span>
						<input
							name="name"
							className="box small"
							autoComplete="off"
							defaultValue={one(typed ?? {}, 'name') || name}
						/>
					</label>
					<button type="submit" className="act">
						Rename
					</button>
				</form>
				{others.length > 0 && (
					<form action={mergeColours} className="flex items-end gap-2">
						<Which client={client} colour={id} />
						<label>
							<span className="block text-sm font-semibold">
								It is one with<span className="sr-only">, {name}</span>
							</span>
							<select name="other" className="box small">
								{others.map((other) => (
									<option key={other.id} value={other.id}>
										{other.name}
									</option>
								))}
							</select>
						</label>
						<button type="submit" className="act">
							Make them one
						</button>
					</form>
				)}
			</div>
		</details>
	)
}
