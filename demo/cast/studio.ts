/** The studio, in a harbour town that is on no map. */
export const studio = {
	name: 'Sedge & Lantern',
	timeZone: 'America/New_York',
	currency: 'USD',
	lengths: 'in',
} as const

/** Whoever works there; the designer is who sets the studio up. */
export const staff = {
	designer: { name: 'Isolde Ferncastle', address: 'isolde@sedgeandlantern.example' },
	helper: { name: 'Tobin Wexmoor', address: 'tobin@sedgeandlantern.example' },
} as const
