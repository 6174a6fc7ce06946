'use client'
import { quantity } from '@/lib/format/words'
import type { DeskOption } from '@/lib/proposal/desk/desk'
import { inPot } from '@/lib/proposal/desk/removed/lines-of'
import type { StandIn } from '@/lib/proposal/desk/stand-in'
import { swapped } from '@/lib/proposal/desk/swapped'
import type { Known, Option, Part } from '../known'
import type { FindOthers, Where } from './another'
import { Findings } from './findings'
import { Folded } from './folded'
import { Lines } from './lines'

type Named = { readonly id: string; readonly name: string }
export type OfPots = Part<Option> & {
	readonly called: string
	readonly known: Known
	readonly containers: readonly Named[]
	/** As the server sees it; undefined until it has been asked. */
	readonly desk: DeskOption | undefined
	readonly findOthers: FindOthers
	readonly onNote: (container: string, check: string, note: string) => void
	/** Puts what is in it into the others as well; null of all but the first of several. */
	readonly onSpread: (() => void) | null
}

/** One material replaced by another in the containers named. */
const swappedIn = (option: Option, where: readonly Named[], from: string, to: StandIn): Option => ({
	...option,
	pots: option.pots.map((pot) =>
		where.some(({ id }) => id === pot.container) ? { ...pot, lines: swapped(pot.lines, from, to) } : pot,
	),
})

/** What a palette puts into one container, and what the checks say of it. */
export function Pot({ pot, ...of }: OfPots & { readonly pot: Named }) {
	const { value, onChange, errors, path, called, known, containers, desk, findOthers, onNote, onSpread } = of
	const name = `${called}, ${pot.name}`
	const at = value.pots.findIndex(({ container }) => container === pot.id)
	const lines = value.pots[at]?.lines ?? []
	const swap = (from: string, to: StandIn, where: Where) =>
		onChange(swappedIn(value, where === 'everywhere' ? containers : [pot], from, to))
	return (
		<>
			<Folded title={pot.name} says={quantity(lines.length, 'line')} hasMuch={lines.length > 0}>
				<Lines
					value={lines}
					onChange={(lines) => onChange(inPot(value, pot.id, () => [...lines]))}
					errors={errors}
					path={`${path}.pots.${at < 0 ? value.pots.length : at}.lines`}
					known={known}
					of={name}
					where={{ option: value.key, container: pot.id }}
					addAt={`${path}.pots.${pot.id}`}
					isOneOfMany={containers.length > 1}
					findOthers={(material) => findOthers(material, pot.id)}
					onSwap={swap}
					onSpread={onSpread}
				/>
			</Folded>
			{desk?.pots
				.filter(({ container }) => container === pot.id)
				.map((state) => (
					<Findings
						key={state.container}
						state={state}
						of={name}
						option={value.key}
						path={`${path}.found.${pot.id}`}
						onNote={(check, note) => onNote(pot.id, check, note)}
					/>
				))}
		</>
	)
}
