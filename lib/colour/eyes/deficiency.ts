/** Red, green or blue cones missing. */
export const deficiencies = ['protan', 'deutan', 'tritan'] as const
export type Deficiency = (typeof deficiencies)[number]

/** The cones that are missing. */
export const missing: Readonly<Record<Deficiency, string>> = { protan: 'red', deutan: 'green', tritan: 'blue' }

/** "red-green, no green cones" */
export const deficiencyWords = (of: Deficiency): string =>
	`${of === 'tritan' ? 'blue-yellow' : 'red-green'}, no ${missing[of]} cones`
