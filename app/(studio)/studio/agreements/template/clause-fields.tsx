import { TextField, TickField, WordsField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { FieldErrors, Typed } from '@/lib/forms/read'

type Props = { readonly index: number; readonly typed: Typed; readonly errors: FieldErrors; readonly isNew: boolean }

/** One clause: whether it is used, where it stands, what it is called and what it says. */
export function ClauseFields({ index, typed, errors, isNew }: Props) {
	const box = (name: string) => `clause.${index}.${name}`
	const key = one(typed, box('key'))
	const title = one(typed, box('title'))
	const rows = Math.max(3, Math.ceil(one(typed, box('text')).length / 80) + 1)
	return (
		<fieldset className="mt-8 border-t border-line pt-3" id={isNew ? 'new-clause' : `clause-${key}`}>
			<legend className="float-left text-xl font-bold">{isNew ? 'A clause of your own' : title || 'A clause'}</legend>
			<input type="hidden" name={box('key')} value={key} />
			<div className="clear-both grid gap-x-8 sm:grid-cols-[1fr_7rem_9rem]">
				<TextField name={box('title')} label="Title" value={title} error={errors[box('title')]} />
				<TextField
					name={box('place')}
					label="Place"
					inputMode="numeric"
					value={one(typed, box('place')) || String(index + 1)}
					error={errors[box('place')]}
				/>
				<div className="sm:pt-8">
					<TickField
						name={box('on')}
						label="In use"
						isTicked={one(typed, box('on')) === 'on' || (isNew && title === '')}
					/>
				</div>
			</div>
			<WordsField
				name={box('text')}
				label="What it says"
				rows={rows}
				value={one(typed, box('text'))}
				error={errors[box('text')]}
			/>
		</fieldset>
	)
}
