import { emptyTerms, type Terms } from '@/lib/agreement/terms'
import { cents } from '@/lib/units/cents'
import type { Day } from '@/lib/units/day'
import type { ContainerId } from '@/lib/units/id'

/** What the studio agrees with a client of the cast who stays for a year: winter and spring fixed, the rest quoted. */
export const aYear = (from: Day, to: Day, containers: readonly ContainerId[]): Terms => ({
	...emptyTerms,
	from,
	to,
	seasons: [
		{
			...{ quarter: 'winter', year: Number(from.slice(0, 4)) },
			price: { is: 'fixed', cents: cents(84_000) },
			containers: [...containers],
			visits: [
				{ kind: 'install', count: 1 },
				{ kind: 'check', count: 2 },
				{ kind: 'take-down', count: 1 },
			],
		},
		{
			...{ quarter: 'spring', year: Number(from.slice(0, 4)) + 1 },
			price: { is: 'fixed', cents: cents(61_500) },
			containers: [...containers],
			visits: [{ kind: 'install', count: 1 }],
		},
		{
			...{ quarter: 'summer', year: Number(from.slice(0, 4)) + 1 },
			price: { is: 'quoted' },
			containers: [...containers],
			visits: [],
		},
	],
	plan: { is: 'every months', months: 3, start: { is: 'on', day: from }, count: 4 },
	said: { ...emptyTerms.said, waters: 'client', law: 'the State of Maine', lightsDownBy: from },
})
