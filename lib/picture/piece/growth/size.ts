/** What is usual where a measure is missing or makes no sense; never outside of what can be drawn (in cm). */
export function size(cm: number | null, usual: number, least = 2, most = 400): number {
	if (cm === null || !(cm > 0)) return usual
	return Math.min(most, Math.max(least, cm))
}
