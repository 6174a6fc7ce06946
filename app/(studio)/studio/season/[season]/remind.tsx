import { v7 } from 'uuid'
import { remind } from '../../actions'

type Props = {
	readonly proposal: string
	readonly season: string
	readonly name: string
	readonly page: number
	readonly ask: string
	readonly isAgain: boolean
	readonly isReminded: boolean
	readonly remindedOn: string
}

/** Reminds one client; a second time within two days it asks first. */
export function Remind({ proposal, season, name, page, ask, isAgain, isReminded, remindedOn }: Props) {
	if (isReminded) return <output className="font-semibold">Reminded</output>
	return (
		<form action={remind}>
			<input type="hidden" name="once" value={v7()} />
			<input type="hidden" name="proposal" value={proposal} />
			<input type="hidden" name="season" value={season} />
			<input type="hidden" name="page" value={page} />
			<input type="hidden" name="ask" value={ask} />
			{isAgain && <input type="hidden" name="again" value="yes" />}
			{isAgain && <p role="alert">Reminded {remindedOn} already.</p>}
			<button type="submit" className="does">
				{isAgain ? 'Remind again all the same' : 'Remind'}
				<span className="sr-only"> {name}</span>
			</button>
		</form>
	)
}
