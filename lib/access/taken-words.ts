/** Whose an address is that was given for somebody else, or a second time. */
export type Taken = {
	readonly by: string
	readonly who: 'staff' | 'themselves' | 'a contact here' | 'somebody else'
}

/** Why a mail address cannot be a contact's. */
export function takenWords({ by, who }: Taken): string {
	switch (who) {
		case 'staff':
			return 'This address belongs to somebody at the studio.'
		case 'themselves':
			return `This is the address that ${by} has already.`
		case 'a contact here':
			return `This is the address of ${by}, a contact here already: two cannot share one. Nothing was changed.`
		case 'somebody else':
			return `This is the address of ${by}, who is known here already. Invite ${by} by it instead, and close the other door. Nothing was changed.`
		default:
			return who satisfies never
	}
}
