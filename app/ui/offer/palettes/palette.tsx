import Link from 'next/link'
import { list } from '@/lib/format/words'
import type { OptionView } from '@/lib/proposal/offer/offer-view'
import { Strip } from './strip'

type Props = {
	readonly option: OptionView
	/** Where it leads to put it on the wall, at every place; null where there is nothing to pick. */
	readonly href: string | null
	/** Places take different palettes. */
	readonly isMixed: boolean
	readonly isAlone: boolean
}

/** One palette: a strip from the paint shop with its total, and the way to put it on the wall. */
export function Palette({ option, href, isMixed, isAlone }: Props) {
	const { name, total, palette, at, isOnWall } = option
	const isMarked = href !== null && (isMixed ? at.length > 0 : isOnWall)
	return (
		<li className={`p-4 ${isMarked ? 'outline-3 outline-ink' : 'outline-1 outline-line'}`}>
			{!isAlone && (
				<p className="mb-3 flex items-baseline justify-between gap-3">
					<b className="text-lg leading-tight">{name}</b>
					{href !== null && <span className="font-semibold tabular-nums">{total}</span>}
				</p>
			)}
			<Strip palette={palette} tall={isAlone} />
			{at.length > 0 && <p className="mt-3 font-semibold">At {list([...at])}</p>}
			{href !== null && <OnWall name={name} href={href} isMixed={isMixed} isWhole={isOnWall && !isMixed} />}
		</li>
	)
}

type OnWallProps = {
	readonly name: string
	readonly href: string
	readonly isMixed: boolean
	readonly isWhole: boolean
}

function OnWall({ name, href, isMixed, isWhole }: OnWallProps) {
	const put = isMixed ? 'Put it on every wall' : 'Put it on the wall'
	return (
		<p className="no-print mt-3">
			<Link
				href={href}
				replace
				scroll={false}
				prefetch={false}
				aria-current={isWhole ? 'true' : undefined}
				className={`does inline-flex min-h-11 items-center ${isWhole ? 'text-soft no-underline' : ''}`}
			>
				{isWhole ? 'On your wall now' : put}
				<span className="sr-only">: {name}</span>
			</Link>
		</p>
	)
}
