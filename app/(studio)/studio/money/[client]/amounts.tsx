import { v7 } from 'uuid'
import { ChoiceField, TextField, TickField } from '@/app/ui/field'
import type { MoneyFormat } from '@/lib/format/money'
import type { Attempt } from '@/lib/forms/read'
import type { OpenInvoice } from '@/lib/money/ledger/account'
import { means } from '@/lib/money/ledger/entry'
import type { Day } from '@/lib/units/day'
import { creditOne, giveUp, payBack, payIn } from './actions'

type Props = {
	readonly client: string
	readonly today: Day
	readonly invoices: readonly OpenInvoice[]
	readonly attempt: Attempt
	readonly money: MoneyFormat
}
type Of = Pick<Props, 'client' | 'attempt'> & { readonly id: string }

const one = ({ typed }: Attempt, name: string) => {
	const value = typed[name]
	return typeof value === 'string' ? value : ''
}
const meansChoices = means.map((value) => ({ value, label: value }))

function Hidden({ client }: Pick<Props, 'client'>) {
	return (
		<>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="client" value={client} />
		</>
	)
}

function Text({
	id,
	name,
	label,
	attempt,
	...rest
}: Of & { name: string; label: string; type?: string; fallback?: string }) {
	const { fallback = '', type = 'text' } = rest
	return (
		<TextField
			id={`${id}-${name}`}
			name={name}
			label={label}
			type={type}
			{...(name === 'amount' && { inputMode: 'decimal' as const })}
			value={one(attempt, name) || fallback}
			error={attempt.errors[name]}
		/>
	)
}

function Paid({ today, ...of }: Of & Pick<Props, 'today'>) {
	return (
		<>
			<Text {...of} name="on" label="Day" type="date" fallback={today} />
			<Text {...of} name="amount" label="Amount" />
			<ChoiceField
				id={`${of.id}-means`}
				name="means"
				label="How"
				value={one(of.attempt, 'means')}
				choices={meansChoices}
			/>
			<Text {...of} name="reference" label="Reference" />
		</>
	)
}

function Invoice({ invoices, money, none, ...of }: Of & Pick<Props, 'invoices' | 'money'> & { none: boolean }) {
	const named = invoices.map(({ number, openCents }) => ({
		value: number,
		label: `${number}, ${money(openCents)} open`,
	}))
	return (
		<ChoiceField
			id={`${of.id}-invoice`}
			name="invoice"
			label="Invoice"
			value={one(of.attempt, 'invoice')}
			choices={none ? [{ value: '', label: 'none named: the oldest first' }, ...named] : named}
			error={of.attempt.errors.invoice}
		/>
	)
}

const none: Attempt = { typed: {}, errors: {} }

/** Which form a failed attempt belongs to, by the fields that it alone has. */
function attemptsOf({ typed, errors }: Attempt) {
	const attempt = { typed, errors }
	const isOf = (is: boolean) => (is ? attempt : none)
	const hasReason = 'reason' in typed && 'amount' in typed
	return {
		pay: isOf('means' in typed && 'invoice' in typed),
		back: isOf('means' in typed && !('invoice' in typed)),
		off: isOf(hasReason),
	}
}

/** Where a payment is written down on the page: on a phone below all else. */
export const paymentId = 'payment'

/** Everything that can be written into an account, the usual first. */
export function Amounts({ client, today, invoices, attempt, money }: Props) {
	const { pay, back, off } = attemptsOf(attempt)
	const open = invoices.filter(({ openCents }) => openCents > 0)
	const left = invoices.filter(({ leftCents }) => leftCents > 0)
	return (
		<div className="no-print">
			<form action={payIn} className="max-w-md" noValidate>
				<h2 id={paymentId} className="scroll-mt-4 text-2xl">
					A payment came
				</h2>
				<Hidden client={client} />
				<Paid id="pay" client={client} today={today} attempt={pay} />
				<Invoice id="pay" client={client} invoices={open} money={money} attempt={pay} none />
				<TickField name="keepRest" label="If it is more than is due, keep the rest as credit" />
				<button type="submit" className="act first mt-5">
					Write it down
				</button>
			</form>
			<details className="mt-8" open={back !== none}>
				<summary className="min-h-11 cursor-pointer py-2 font-semibold">Give money back</summary>
				<form action={payBack} className="max-w-md" noValidate>
					<Hidden client={client} />
					<Paid id="back" client={client} today={today} attempt={back} />
					<button type="submit" className="act mt-5">
						Write the refund down
					</button>
				</form>
			</details>
			{left.length > 0 && (
				<details open={off !== none}>
					<summary className="min-h-11 cursor-pointer py-2 font-semibold">Credit an invoice, or write it off</summary>
					<form action={creditOne} className="max-w-md" noValidate>
						<Hidden client={client} />
						<Invoice id="off" client={client} invoices={left} money={money} attempt={off} none={false} />
						<Text id="off" client={client} attempt={off} name="amount" label="Amount, tax in it" />
						<Text id="off" client={client} attempt={off} name="reason" label="Why" />
						<p className="mt-5 flex flex-wrap gap-3">
							<button type="submit" className="act">
								Credit it: it was not owed
							</button>
							<button type="submit" className="act" formAction={giveUp}>
								Write it off: it will not come
							</button>
						</p>
					</form>
				</details>
			)}
		</div>
	)
}
