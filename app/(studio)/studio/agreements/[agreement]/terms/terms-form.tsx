import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { mostRows } from '@/lib/agreement/studio/form/parts'
import { termsText } from '@/lib/agreement/studio/form/terms-text'
import type { OnDesk } from '@/lib/agreement/studio/shown'
import type { Attempt } from '@/lib/forms/read'
import { saveTerms } from '../actions'
import { PlanFields } from './plan-fields'
import { LeftOut, SaidFields } from './said-fields'
import { SeasonFields } from './season-fields'

type Props = { readonly desk: OnDesk; readonly attempt: Attempt }

const rowsIn = (typed: object, of: RegExp) =>
	Math.max(-1, ...Object.keys(typed).map((name) => Number(of.exec(name)?.[1] ?? -1))) + 1

/** The terms as a form: what is there, and room for one season and two dates more. */
export function TermsForm({ desk, attempt }: Props) {
	const { row, version, terms, facts, template } = desk
	const isTried = 'version' in attempt.typed
	const typed = isTried ? attempt.typed : termsText(terms)
	const errors = isTried ? attempt.errors : {}
	const seasons = rowsIn(typed, /^season\.(\d+)\.quarter$/)
	const parts = rowsIn(typed, /^part\.(\d+)\.share$/)
	return (
		<form action={saveTerms} noValidate className="max-w-4xl">
			<ErrorSummary errors={errors} />
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="agreement" value={row.id} />
			<input type="hidden" name="version" value={version} />
			<div className="grid gap-x-6 sm:grid-cols-2">
				<TextField name="from" label="Begins" type="date" value={one(typed, 'from')} error={errors.from} />
				<TextField name="to" label="Ends" type="date" value={one(typed, 'to')} error={errors.to} />
			</div>
			{Array.from(
				{ length: Math.min(mostRows.season, seasons + (isTried ? 0 : 1)) },
				(_, index) => `season.${index}`,
			).map((name, index) => (
				<SeasonFields key={name} index={index} typed={typed} errors={errors} containers={facts.containers} />
			))}
			<PlanFields
				typed={typed}
				errors={errors}
				seasons={terms.seasons}
				parts={Math.min(mostRows.part, Math.max(4, parts + (isTried ? 0 : 2)))}
			/>
			<SaidFields typed={typed} errors={errors} />
			<LeftOut typed={typed} template={template} />
			<button type="submit" className="act mt-6">
				Save the terms
			</button>
		</form>
	)
}
