import { TextField, WordsField } from '@/app/ui/field'
import { wallKinds } from '@/lib/container/site'
import type { FieldErrors } from '@/lib/forms/read'
import { placeLabels } from './labels'
import { Pick } from './pick'

export type Known = { readonly id: string; readonly name: string }
type Props = {
	readonly known: readonly Known[]
	readonly first: Readonly<Record<string, string>>
	readonly errors: FieldErrors
}

/** Where the containers stand: at a place that is known, or at a new one. */
export function PlaceBoxes({ known, first, errors }: Props) {
	const box = (name: keyof typeof placeLabels) => ({
		...{ name, label: placeLabels[name], value: first[name] ?? '', error: errors[name] },
	})
	const places = [{ value: '', label: 'a new place' }, ...known.map(({ id, name }) => ({ value: id, label: name }))]
	const isFolded = !('new.taxPercent' in errors || 'new.driveMinutes' in errors)
	return (
		<>
			{known.length === 0 ? (
				<input type="hidden" name="place" value="" />
			) : (
				<Pick
					name="place"
					legend="Where"
					choices={places}
					chosen={first.place ?? ''}
					error={errors.place}
					across={2}
					mark={(value) => (value === '' ? '' : 'known')}
				/>
			)}
			<div className="new-place">
				<TextField {...box('new.name')} hint="As in “front door”." />
				<WordsField {...box('new.address')} rows={2} />
				<Pick
					name="new.wallKind"
					legend={placeLabels['new.wallKind']}
					choices={wallKinds.map((value) => ({ value, label: value }))}
					chosen={first['new.wallKind'] ?? ''}
					error={errors['new.wallKind']}
					across={3}
				/>
				<TextField
					{...box('new.wallHex')}
					type="color"
					hint="Left as it is, it becomes the largest colour of the photo."
				/>
				<WordsField {...box('new.accessNote')} rows={2} hint="Gate, key, where the hose and the outlet are." />
				<details className="mt-5" open={!isFolded}>
					<summary className="act w-full">Tax and the way there</summary>
					<div className="grid grid-cols-2 items-end gap-x-3">
						<TextField {...box('new.taxPercent')} inputMode="decimal" />
						<TextField {...box('new.driveMinutes')} inputMode="decimal" />
					</div>
				</details>
			</div>
		</>
	)
}
