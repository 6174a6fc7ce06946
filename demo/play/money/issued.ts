import { beginAgreement } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import type { Stamp } from '@/db/stamp'
import { addMonths, firstOfMonth } from '@/lib/agreement/instalment/months'
import { emptyTerms, type Terms } from '@/lib/agreement/terms'
import { cents } from '@/lib/units/cents'
import { addDays, day } from '@/lib/units/day'
import type { CastAgreement } from '../../cast/agreements'
import { yearOf } from '../house'
import { must } from '../must'
import type { Stage } from '../stage'

function termsOf({ today, containers }: Stage, of: CastAgreement): Terms {
	const begins = addDays(today, of.begins.on)
	const from = of.begins.is === 'that day' ? begins : firstOfMonth(begins)
	const to = addDays(addMonths(from, 12), -1)
	const year = yearOf(today)
	const lastWinter = Math.max(...of.seasons.map(({ quarter, later }) => (quarter === 'winter' ? later : 0)))
	return {
		...emptyTerms,
		...{ from, to },
		seasons: of.seasons.map(({ quarter, later, cents: amount, visits }) => ({
			...{ quarter, year: year + later },
			price: amount === null ? { is: 'quoted' } : { is: 'fixed', cents: cents(amount) },
			containers: of.containers.map(containers.of),
			visits: visits.map(([kind, count]) => ({ kind, count })),
		})),
		plan: { is: 'every months', months: of.every, count: 12 / of.every, start: { is: 'on', day: from } },
		said: {
			...emptyTerms.said,
			waters: of.waters,
			law: 'the State of Westmere',
			lightsDownBy: day(`${year + lastWinter + 1}-02-15`),
		},
	}
}

/** Written and issued at once. */
export async function issued(stage: Stage, of: CastAgreement, signBy: number, stamp: Stamp): Promise<void> {
	const designer = await stage.designer()
	const beginning = { client: stage.clients.of(of.client), terms: termsOf(stage, of) }
	const { id } = must(of.client, await beginAgreement(designer, beginning, stamp))
	const issuing = { agreement: id, version: 1, signBy: addDays(stage.today, signBy), once: stamp.id<'once'>() }
	must(of.client, await issueAgreement(designer, issuing, stamp))
}
