import { v7 } from 'uuid'
import { numberWord } from '@/lib/format/words'
import { remindAll } from './actions'

type Props = { readonly season: string; readonly waiting: number; readonly lately: number }

/** One form for all who owe an answer; whoever was reminded within two days only with a second word. */
export function RemindAll({ season, waiting, lately }: Props) {
	if (waiting === 0) return null
	const who = lately === 1 ? 'was' : 'were'
	return (
		<form action={remindAll} className="flex flex-wrap items-center gap-x-5 gap-y-1">
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="season" value={season} />
			<button type="submit" className="act">
				Remind all that wait
			</button>
			{lately > 0 && (
				<label className="flex min-h-11 items-center gap-3">
					<input type="checkbox" className="tick" name="again" />
					<span>
						{numberWord(lately)} {who} reminded in the last two days: remind them again too
					</span>
				</label>
			)}
		</form>
	)
}
