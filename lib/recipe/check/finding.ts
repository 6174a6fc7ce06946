export type Weight = 'caution' | 'look again'

/**
 * What a check says of a recipe in a pot. `key` names the check, what it is about and how much it weighs, and stays
 * the same as long as these do: a note that overrules a caution does not silence what has become worse.
 */
export type Finding = {
	readonly key: string
	/** A plain sentence with its reason. */
	readonly says: string
	/** What would mend it. */
	readonly mend: string
	readonly weight: Weight
}

/** A finding whose key ends in its weight: "light/<material>/caution". */
export const finding = (about: string, weight: Weight, says: string, mend: string): Finding => ({
	key: `${about}/${weight}`,
	says,
	mend,
	weight,
})

export type Judged = {
	readonly open: readonly Finding[]
	readonly overruled: readonly (Finding & { readonly note: string })[]
}

/** Findings by whether the designer has overruled them; `notes` are by key, and an empty one overrules nothing. */
export function overruled(findings: readonly Finding[], notes: ReadonlyMap<string, string>): Judged {
	const noteOf = ({ key }: Finding) => notes.get(key)?.trim() ?? ''
	return {
		open: findings.filter((each) => noteOf(each) === ''),
		overruled: findings.filter((each) => noteOf(each) !== '').map((each) => ({ ...each, note: noteOf(each) })),
	}
}
