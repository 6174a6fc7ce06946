'use client'
import type { DraftText } from '@/lib/forms/draft-form'
import type { FieldErrors } from '@/lib/forms/read'
import type { Desk } from '@/lib/proposal/desk/desk'
import type { Pots } from '@/lib/proposal/desk/removed/removed'
import { boxId, Does } from '../box'
import { type Look, Looking } from '../design/looking'
import { mostOptions, type useOptions } from '../design/use-options'
import { type Known, replaced } from '../known'
import { WithPutBack } from '../removal/put-back'
import { OptionFields } from './option'

type Props = {
	readonly draft: DraftText
	readonly onChange: (options: DraftText['options']) => void
	readonly onReplace: (option: string, pots: Pots) => void
	readonly errors: FieldErrors
	readonly known: Known
	readonly desk: Desk | undefined
	readonly looking: readonly [look: Look, onLook: (next: Look) => void]
	readonly design: ReturnType<typeof useOptions>
}

/** The palettes, how they are looked at, and the ways to have another. */
export function Options({ draft, onChange, onReplace, errors, known, desk, looking: [look, onLook], design }: Props) {
	const { designing, putIn, proposeAll, findOthers, add, note } = design
	const { options, agreement } = draft
	const chosen = known.containers.filter(({ id }) => draft.containers.some((each) => each.id === id))
	return (
		<>
			<p className="mt-5 flex flex-wrap items-center gap-4">
				{options.length < mostOptions && (
					<button
						type="button"
						id={boxId('options')}
						className="act"
						aria-disabled={designing.isAsking}
						onClick={() => void proposeAll()}
					>
						Propose palettes for this wall
					</button>
				)}
				<span role="status" className="text-soft">
					{designing.isAsking ? 'Designing…' : designing.says}
				</span>
			</p>
			{options.length > 0 && <Looking value={look} onChange={onLook} />}
			<WithPutBack list="options" as="div">
				{options.map((option, index) => (
					<OptionFields
						key={option.key}
						value={option}
						onChange={(next) => onChange(replaced(options, index, next))}
						onReplace={(pots) => onReplace(option.key, pots)}
						onCopy={() => add(option)}
						errors={errors}
						path={`options.${index}`}
						known={known}
						number={index + 1}
						containers={chosen}
						hasSupplement={agreement.is === 'fixed'}
						desk={desk?.options.find(({ key }) => key === option.key)}
						onGrow={(recipe) => void putIn(option.key, recipe)}
						findOthers={findOthers}
						onNote={(container, check, words) => note(option.key, container, check, words)}
					/>
				))}
			</WithPutBack>
			{options.length < mostOptions && (
				<p className="mt-4">
					<Does onClick={() => add()}>Add a palette</Does>
				</p>
			)}
		</>
	)
}
