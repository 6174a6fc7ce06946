import type { ProposalId } from '../units/id'

type Linked = {
	readonly proposal: ProposalId
	/** Whom it is sent to, so that one press asks for their way in; left out where anybody may get it. */
	readonly handle?: string
	readonly coverKey: string | null
}

/** The path that is sent out: it says which cover stands for it. */
export function clientLink({ proposal, handle, coverKey }: Linked): string {
	const query = new URLSearchParams({
		...(handle !== undefined && { for: handle }),
		...(coverKey !== null && { cover: coverKey }),
	})
	return `/proposal/${proposal}?${query}`
}
