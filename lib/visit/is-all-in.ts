/**
 * Whether the installs that were made reach every place of a design. Null stands for a visit to all places.
 */
export function isAllIn(places: readonly string[], installed: readonly (string | null)[]): boolean {
	return installed.includes(null) || (places.length > 0 && places.every((place) => installed.includes(place)))
}
