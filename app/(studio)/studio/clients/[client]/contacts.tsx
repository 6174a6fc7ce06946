import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { ClientPage } from '@/db/clients/read-clients'
import type { Attempt } from '@/lib/forms/read'
import { endContact, invite } from '../actions'

type Props = {
	readonly client: string
	readonly contacts: ClientPage['contacts']
	/** Who can no longer come in, when the door was closed just now. */
	readonly gone: string | undefined
	readonly attempt: Attempt
}

/** The only one who may approve. */
const isAlone = (contacts: Props['contacts'], id: string) =>
	contacts.every((each) => (each.may === 'approve') === (each.id === id))

/** Who may come in at the client's door, and to do what. */
export function Contacts({ client, contacts, gone, attempt: { typed, errors } }: Props) {
	return (
		<section aria-labelledby="contacts">
			<h2 id="contacts" className="text-xl">
				Contacts
			</h2>
			{gone && (
				<p className="said mt-2" role="status">
					{gone} can no longer come in.
				</p>
			)}
			<ul className="mt-2 border-t border-line">
				{contacts.map(({ id, name, address, may }) => (
					<li key={id} className="border-b border-line py-2">
						<p className="font-semibold">{name}</p>
						<p className="wrap-anywhere text-soft">
							{address}, may {may}
						</p>
						<details>
							<summary className="does inline-block">
								Close the door…<span className="sr-only"> to {name}</span>
							</summary>
							<form action={endContact} className="mt-1 mb-3">
								<p className="text-soft">
									{name} is signed out at once, can sign in no more and gets no more mail about this client.
									{isAlone(contacts, id) && ' Nobody else here may approve.'} Another invitation opens the door again.
								</p>
								<input type="hidden" name="once" value={v7()} />
								<input type="hidden" name="client" value={client} />
								<input type="hidden" name="contact" value={id} />
								<button type="submit" className="act mt-2">
									Close the door to {name}
								</button>
							</form>
						</details>
					</li>
				))}
			</ul>
			<details className="mt-2" open={Object.keys(errors).length > 0}>
				<summary className="does inline-block">Invite a contact</summary>
				<form action={invite} key={JSON.stringify(typed)} noValidate>
					<ErrorSummary errors={errors} />
					<input type="hidden" name="once" value={v7()} />
					<input type="hidden" name="client" value={client} />
					<TextField name="name" label="Name" value={one(typed, 'name')} error={errors.name} />
					<TextField
						name="address"
						label="Mail address"
						type="email"
						inputMode="email"
						value={one(typed, 'address')}
						error={errors.address}
					/>
					<ChoiceField
						name="may"
						label="May"
						value={one(typed, 'may') || 'approve'}
						choices={[
							{ value: 'approve', label: 'approve' },
							{ value: 'look', label: 'look only' },
						]}
						error={errors.may}
					/>
					<button type="submit" className="act mt-4">
						Invite
					</button>
				</form>
			</details>
		</section>
	)
}
