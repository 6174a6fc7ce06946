import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { Attempt } from '@/lib/forms/read'
import { endStaff, hire } from './actions'

type Member = {
	readonly id: string
	readonly name: string
	readonly address: string
	readonly role: string
	readonly isMe: boolean
}
type Props = { readonly members: readonly Member[]; readonly attempt: Attempt }

/** Who may come in at the studio's door. */
export function Staff({ members, attempt: { typed, errors } }: Props) {
	return (
		<section className="mt-14 max-w-xl" aria-labelledby="staff">
			<h2 id="staff" className="text-xl">
				Who works here
			</h2>
			<ul className="mt-2 border-t border-line">
				{members.map(({ id, name, address, role, isMe }) => (
					<li key={id} className="border-b border-line py-2">
						<p className="font-semibold">{name}</p>
						<p className="wrap-anywhere text-soft">
							{role}, {address}
						</p>
						{!isMe && (
							<form action={endStaff}>
								<input type="hidden" name="once" value={v7()} />
								<input type="hidden" name="member" value={id} />
								<button type="submit" className="does">
									Close the door to {name}
								</button>
							</form>
						)}
					</li>
				))}
			</ul>
			<details className="mt-2" open={Object.keys(errors).length > 0}>
				<summary className="does inline-block">Let a helper in</summary>
				<form action={hire} key={JSON.stringify(typed)} noValidate>
					<ErrorSummary errors={errors} />
					<p className="mt-2 text-soft">
						A helper sees what to install and where: no price, no cost, no client’s page. They sign in with this
						address.
					</p>
					<input type="hidden" name="once" value={v7()} />
					<TextField name="helper" label="Their name" value={one(typed, 'helper')} error={errors.helper} />
					<TextField
						name="address"
						label="Their mail address"
						type="email"
						inputMode="email"
						value={one(typed, 'address')}
						error={errors.address}
					/>
					<button type="submit" className="act mt-4">
						Let them in
					</button>
				</form>
			</details>
		</section>
	)
}
