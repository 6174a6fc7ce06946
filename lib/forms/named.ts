/** "Answer by: choose a day." where the box has a name that can be said; else what is wrong alone. */
export function named(label: string | undefined, says: string): string {
	return label === undefined ? says : `${label}: ${says.charAt(0).toLowerCase()}${says.slice(1)}`
}
