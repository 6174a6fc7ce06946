import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import type { ClientPage } from '@/db/clients/read-clients'
import { mayInWords } from '@/lib/access/may-words'
import { mays } from '@/lib/access/viewer'
import type { Attempt } from '@/lib/forms/read'
import { invite } from '../actions'
import { Contact } from './contact'

type Props = {
	readonly client: string
	readonly contacts: ClientPage['contacts']
	/** What was done just now, in a sentence. */
	readonly told: string | undefined
	readonly attempt: Attempt
}

const none: Attempt = { typed: {}, errors: {} }

/** The only one who may approve. */
const isAlone = (contacts: Props['contacts'], id: string) =>
	contacts.every((each) => (each.may === 'approve') === (each.id === id))

/** Who may come in at the client's door, and to do what. */
export function Contacts({ client, contacts, told, attempt }: Props) {
	const { typed, errors } = 'contact' in attempt.typed ? none : attempt
	return (
		<section aria-labelledby="contacts">
			<h2 id="contacts" className="text-xl">
				Contacts
			</h2>
			{told && (
				<p className="said mt-2" role="status">
					{told}
				</p>
			)}
			<ul className="mt-2 border-t border-line">
				{contacts.map((contact) => (
					<Contact
						key={contact.id}
						client={client}
						contact={contact}
						isAlone={isAlone(contacts, contact.id)}
						attempt={attempt.typed.contact === contact.id ? attempt : none}
					/>
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
						choices={mays.map((may) => ({ value: may, label: mayInWords[may] }))}
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
