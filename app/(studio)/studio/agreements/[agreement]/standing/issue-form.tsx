import { v7 } from 'uuid'
import { TextField } from '@/app/ui/field'
import { changesInWords } from '@/lib/agreement/document/changes'
import { placeOf } from '@/lib/agreement/studio/box-of'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import { lawyerLine } from '@/lib/agreement/template/template'
import type { Attempt } from '@/lib/forms/read'
import { addDays } from '@/lib/units/day'
import { issue } from '../actions'

type Props = { readonly desk: OnDesk; readonly attempt: Attempt }

const twoWeeks = 14

/** What is still open, each with a link to its box; else what is different, until when it is to be signed, and the act itself. */
export function IssueForm({ desk, attempt: { typed, errors } }: Props) {
	const { row, problems, terms, changes, today } = desk
	if (problems.length > 0)
		return (
			<section className="said wrong mt-10 max-w-3xl" aria-labelledby="open">
				<h2 id="open" className="text-lg">
					Before it can be issued
				</h2>
				<ul className="mt-2">
					{problems.map((problem) => (
						<li key={`${problem.at} ${problem.says}`}>
							<a className="inline-block py-1 pointer-coarse:py-2.5" href={placeOf(problem, terms)}>
								{problem.says}
							</a>
						</li>
					))}
				</ul>
			</section>
		)
	return (
		<form action={issue} className="mt-10 max-w-3xl border-t border-line pt-4" id="issue">
			<h2 className="text-xl">Issue it</h2>
			<p className="mt-2">
				It is signed in your name and mailed to everybody at {desk.row.name} who may sign. What is typed above and not
				saved yet is not in it.
			</p>
			{changes !== undefined && <Changes desk={desk} />}
			<p className="mt-2 text-soft">{lawyerLine}</p>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="agreement" value={row.id} />
			<input type="hidden" name="version" value={desk.version} />
			<div className="max-w-xs">
				<TextField
					name="signBy"
					label="To be signed by"
					type="date"
					value={typeof typed.signBy === 'string' ? typed.signBy : addDays(today, twoWeeks)}
					error={errors.signBy}
				/>
			</div>
			<button type="submit" className="act first mt-5">
				{row.number === 0 ? 'Issue this agreement' : 'Issue it anew'}
			</button>
		</form>
	)
}

function Changes({ desk: { changes = [] } }: { readonly desk: OnDesk }) {
	return (
		<>
			<p className="mt-3 font-semibold">{changesInWords(changes)}</p>
			<dl className="mt-2">
				{changes.map(({ of, was, is }) => (
					<div key={of} className="border-t border-line py-2">
						<dt className="font-semibold">{of}</dt>
						{was !== null && <dd className="wrap-anywhere text-soft">before: {was}</dd>}
						<dd className="wrap-anywhere">{is === null ? 'no longer in it' : `now: ${is}`}</dd>
					</div>
				))}
			</dl>
		</>
	)
}
