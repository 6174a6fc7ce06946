import { v7 } from 'uuid'
import { numberWord } from '@/lib/format/words'
import { remindSigner, remindSigners } from './actions'

type One = {
	readonly agreement: string
	readonly name: string
	readonly year?: number
	readonly isAgain: boolean
	readonly isReminded: boolean
	readonly remindedOn: string
}

/** Reminds one client to sign; a second time within two days it asks first. */
export function Remind({ agreement, name, year, isAgain, isReminded, remindedOn }: One) {
	if (isReminded) return <output className="font-semibold">Reminded</output>
	return (
		<form action={remindSigner}>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="agreement" value={agreement} />
			<input type="hidden" name="year" value={year ?? ''} />
			{isAgain && <input type="hidden" name="again" value="yes" />}
			{isAgain && <p role="alert">Reminded {remindedOn} already.</p>}
			<button type="submit" className="does">
				{isAgain ? 'Remind again all the same' : 'Remind'}
				<span className="sr-only"> {name}</span>
			</button>
		</form>
	)
}

type All = { readonly year: number; readonly waiting: number; readonly lately: number }

/** One form for all who have to sign; whoever was reminded within two days only with a second word. */
export function RemindAll({ year, waiting, lately }: All) {
	if (waiting === 0) return null
	return (
		<form action={remindSigners} className="flex flex-wrap items-center gap-x-5 gap-y-1">
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="year" value={year} />
			<button type="submit" className="act">
				Remind all that wait
			</button>
			{lately > 0 && (
				<label className="flex min-h-11 items-center gap-3">
					<input type="checkbox" className="tick" name="again" />
					<span>
						{numberWord(lately)} {lately === 1 ? 'was' : 'were'} reminded in the last two days: remind them again too
					</span>
				</label>
			)}
		</form>
	)
}
