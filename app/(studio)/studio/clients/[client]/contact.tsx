import { v7 } from 'uuid'
import { ErrorSummary } from '@/app/ui/error-summary'
import { TextField } from '@/app/ui/field'
import { one } from '@/app/ui/studio/settings-fields'
import { mayInWords } from '@/lib/access/may-words'
import type { May } from '@/lib/access/viewer'
import { list } from '@/lib/format/words'
import type { Attempt } from '@/lib/forms/read'
import { changeAddress, endContact } from '../actions'

type Props = {
	readonly client: string
	readonly contact: {
		readonly id: string
		readonly name: string
		readonly address: string
		readonly may: May
		readonly elsewhere: readonly string[]
	}
	/** Nobody else here may approve. */
	readonly isAlone: boolean
	/** What was typed into this one's form of the address. */
	readonly attempt: Attempt
}

const Names = ({ client, contact }: { readonly client: string; readonly contact: string }) => (
	<>
		<input type="hidden" name="once" value={v7()} />
		<input type="hidden" name="client" value={client} />
		<input type="hidden" name="contact" value={contact} />
	</>
)

function Address({ client, contact, attempt: { typed, errors } }: Omit<Props, 'isAlone'>) {
	const { id, name, address, elsewhere } = contact
	const box = `address-${id}`
	const { address: wrong, ...others } = errors
	return (
		<details open={Object.keys(errors).length > 0}>
			<summary className="does inline-block">
				Change the address…<span className="sr-only"> of {name}</span>
			</summary>
			<form action={changeAddress} key={JSON.stringify(typed)} className="mt-1 mb-3" noValidate>
				<ErrorSummary errors={{ ...others, ...(wrong !== undefined && { [box]: wrong }) }} />
				<p className="text-soft">
					This signs {name} out at once and makes links on their way void; {address} is told of it by mail.
					{elsewhere.length > 0 && ` It is one address for every door: it changes for ${list(elsewhere)} too.`}
				</p>
				<Names client={client} contact={id} />
				<TextField
					name="address"
					id={box}
					label={`New mail address of ${name}`}
					type="email"
					inputMode="email"
					value={one(typed, 'address')}
					error={wrong}
				/>
				<button type="submit" className="act mt-3">
					Change the address
				</button>
			</form>
		</details>
	)
}

/** One who may come in at the client's door. */
export function Contact({ client, contact, isAlone, attempt }: Props) {
	const { id, name, address, may } = contact
	return (
		<li className="border-b border-line py-2">
			<p className="font-semibold">{name}</p>
			<p className="wrap-anywhere text-soft">
				{address}, may {mayInWords[may]}
			</p>
			<Address client={client} contact={contact} attempt={attempt} />
			<details>
				<summary className="does inline-block">
					Close the door…<span className="sr-only"> to {name}</span>
				</summary>
				<form action={endContact} className="mt-1 mb-3">
					<p className="text-soft">
						{name} is signed out at once, can sign in no more and gets no more mail about this client.
						{isAlone && ' Nobody else here may approve.'} Another invitation opens the door again.
					</p>
					<Names client={client} contact={id} />
					<button type="submit" className="act mt-2">
						Close the door to {name}
					</button>
				</form>
			</details>
		</li>
	)
}
