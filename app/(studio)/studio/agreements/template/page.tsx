import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { readTemplate } from '@/db/agreements/template'
import { templateText } from '@/lib/agreement/studio/form/template-form'
import { blanksInWords } from '@/lib/agreement/template/blanks-told'
import { faults } from '@/lib/agreement/template/faults'
import { lawyerLine } from '@/lib/agreement/template/template'
import { saveTemplate } from './actions'
import { ClauseFields } from './clause-fields'

export const metadata: Metadata = { title: 'The clauses' }

const numbersIn = (typed: object) => Object.keys(typed).filter((name) => /^clause\.\d+\.key$/.test(name)).length

export default async function TemplatePage({ searchParams }: PageProps<'/studio/agreements/template'>) {
	const { who, frame } = await studioPage('/studio/agreements/template', 'change agreements')
	const template = await readTemplate(who)
	if (template === undefined) hide(who)
	const { form, saved } = await searchParams
	const attempt = await attemptFor(who, form)
	const typed = 'version' in attempt.typed ? attempt.typed : templateText(template)
	const wrong = faults(template)
	const count = 'version' in attempt.typed ? numbersIn(typed) : numbersIn(typed) + 1
	return (
		<StudioFrame {...frame} here="Agreements">
			<p>
				<a href="/studio/agreements" className="inline-flex min-h-11 items-center">
					All agreements
				</a>
			</p>
			<h1 className="text-4xl font-extrabold tracking-tight">The clauses</h1>
			<p className="mt-3 max-w-3xl">
				What every agreement is made from. Version {template.version} stands. What was issued keeps the words that it
				was issued with.
			</p>
			<p className="said mt-4 max-w-3xl">{lawyerLine}</p>
			{saved !== undefined && form === undefined && (
				<p className="said mt-4 max-w-3xl" role="status">
					Saved: version {template.version}.
				</p>
			)}
			{wrong.length > 0 && (
				<ul className="said wrong mt-4 max-w-3xl">
					{wrong.map(({ at, says }) => (
						<li key={`${at} ${says}`}>{says}</li>
					))}
				</ul>
			)}
			<details className="mt-4 max-w-3xl">
				<summary className="does inline-block">The blanks, and what fills each</summary>
				<dl className="mt-2 grid gap-x-6 gap-y-1 sm:grid-cols-[9rem_1fr]">
					{blanksInWords.map(([blank, says]) => (
						<div key={blank} className="contents">
							<dt className="font-semibold">{`{${blank}}`}</dt>
							<dd>{says}</dd>
						</div>
					))}
				</dl>
			</details>
			<form key={String(form)} action={saveTemplate} className="max-w-3xl" noValidate>
				<ErrorSummary errors={attempt.errors} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="version" value={template.version} />
				{Array.from({ length: count }, (_, index) => `clause ${index}`).map((row, index) => (
					<ClauseFields
						key={row}
						index={index}
						typed={typed}
						errors={attempt.errors}
						isNew={typed[`clause.${index}.key`] === undefined || typed[`clause.${index}.key`] === ''}
					/>
				))}
				<p className="mt-6 text-soft">
					To move a clause give it another place: it goes before the one that stands there. A clause that is not in use
					is kept for later.
				</p>
				<button type="submit" className="act first mt-4">
					Save the clauses
				</button>
			</form>
		</StudioFrame>
	)
}
