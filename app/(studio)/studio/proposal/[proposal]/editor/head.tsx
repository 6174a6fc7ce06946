'use client'
import type { DraftText } from '@/lib/forms/draft-form'
import { Box, Pick, Tick, Words } from './box'
import { boxAt, type Part } from './known'

/** Title, letter, dates, and what the price has to know of the job. */
export function Head({ value, onChange, errors }: Omit<Part<DraftText>, 'path'>) {
	const { window, agreement } = value
	const change = (next: Partial<DraftText>) => onChange({ ...value, ...next })
	return (
		<div className="grid gap-3">
			<Box label="Title" value={value.title} onChange={(title) => change({ title })} {...boxAt(errors, 'title')} />
			<Words
				label="Letter"
				rows={6}
				value={value.letter}
				onChange={(letter) => change({ letter })}
				{...boxAt(errors, 'letter')}
			/>
			<div className="grid gap-3 sm:grid-cols-3">
				<Box
					label="Answer by"
					type="date"
					value={value.answerBy}
					onChange={(answerBy) => change({ answerBy })}
					{...boxAt(errors, 'answerBy')}
				/>
				<Box
					label="Goes in from"
					type="date"
					value={window.from}
					onChange={(from) => change({ window: { ...window, from } })}
					{...boxAt(errors, 'window.from')}
				/>
				<Box
					label="Goes in until"
					type="date"
					value={window.to}
					onChange={(to) => change({ window: { ...window, to } })}
					{...boxAt(errors, 'window.to')}
				/>
			</div>
			<div className="grid items-start gap-3 sm:grid-cols-3">
				<Pick
					label="Design"
					value={value.design}
					onChange={(design) => change({ design: design === 'repeat' ? 'repeat' : 'new' })}
				>
					<option value="new">new</option>
					<option value="repeat">repeat</option>
				</Pick>
				<div className="sm:pt-6">
					<Tick
						label="Taken down at the end, nothing follows"
						isTicked={value.takeDown}
						onChange={(takeDown) => change({ takeDown })}
					/>
				</div>
				<AgreementFields
					value={agreement}
					onChange={(next) => change({ agreement: next })}
					errors={errors}
					path="agreement"
					containers={value.containers.map(({ id }) => id)}
				/>
			</div>
		</div>
	)
}

type AgreementProps = Part<DraftText['agreement']> & { readonly containers: readonly string[] }

function AgreementFields({ value, onChange, errors, path, containers }: AgreementProps) {
	const choose = (is: string) => {
		if (is === 'discount') onChange({ is, percent: '5' })
		else if (is === 'fixed') onChange({ is, cents: '0.00', containers: [...containers] })
		else onChange({ is: 'none' })
	}
	return (
		<div>
			<Pick label="Agreement" at={path} value={value.is} onChange={choose}>
				<option value="none">none</option>
				<option value="discount">a discount</option>
				<option value="fixed">a fixed season price</option>
			</Pick>
			{value.is === 'discount' && (
				<Box
					label="Discount, per cent"
					inputMode="decimal"
					value={value.percent}
					onChange={(percent) => onChange({ ...value, percent })}
					{...boxAt(errors, `${path}.percent`)}
				/>
			)}
			{value.is === 'fixed' && (
				<Box
					label="Price of the season"
					inputMode="decimal"
					value={value.cents}
					onChange={(cents) => onChange({ ...value, cents })}
					{...boxAt(errors, `${path}.cents`)}
				/>
			)}
		</div>
	)
}
