type Said = { readonly ok: boolean }

const isDone = <T extends Said>(said: T): said is Extract<T, { readonly ok: true }> => said.ok

/** @throws with the refusal when an act of the play was refused: a cast that the house refuses is a wrong cast */
export function must<T extends Said>(what: string, said: T): Extract<T, { readonly ok: true }> {
	if (!isDone(said)) throw new Error(`${what}: ${JSON.stringify(said)}`)
	return said
}
