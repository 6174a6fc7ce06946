import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { clientPage } from '@/db/clients/read-clients'
import type { Stamp } from '@/db/stamp'
import { must } from '@/demo/play/must'
import type { Viewer } from '@/lib/access/viewer'
import { emptyTerms, type Terms } from '@/lib/agreement/terms'
import { cents } from '@/lib/units/cents'
import { addDays, type Day, day } from '@/lib/units/day'
import type { ClientId, ContainerId, Id } from '@/lib/units/id'

const fixed = (amount: number) => ({ is: 'fixed', cents: cents(amount) }) as const
const visits = (...kinds: readonly ('install' | 'watering' | 'take-down')[]) =>
	kinds.map((kind) => ({ kind, count: 1 }))

/** Two seasons at a price and one that is quoted, paid quarterly. */
export function termsWith(containers: readonly ContainerId[], from = day('2026-12-01')): Terms {
	const year = Number(from.slice(0, 4))
	const season = { containers: [...containers] }
	return {
		...emptyTerms,
		from,
		to: addDays(from, 364),
		seasons: [
			{ ...season, quarter: 'winter', year, price: fixed(61_250), visits: visits('install', 'take-down') },
			{ ...season, quarter: 'spring', year: year + 1, price: fixed(38_401), visits: visits('install', 'watering') },
			{ ...season, quarter: 'summer', year: year + 1, price: { is: 'quoted' }, visits: visits('install') },
		],
		plan: { is: 'every months', months: 3, count: 4, start: { is: 'on', day: from } },
		said: { ...emptyTerms.said, waters: 'client', lightsDownBy: addDays(from, 76), law: 'the State of Westmere' },
	}
}

type To = { readonly designer: Viewer; readonly stamp: () => Stamp; readonly signBy: Day }

const termsFor = async ({ designer }: To, client: ClientId, from: Day): Promise<Terms> => {
	const card = await clientPage(designer, client)
	const places = card?.places ?? []
	return termsWith(
		places.flatMap(({ containers }) => containers.slice(0, 2).map(({ id }) => id)),
		from,
	)
}

async function issue({ designer, stamp, signBy }: To, agreement: Id<'agreement'>, version: number): Promise<void> {
	const once = stamp().id<'once'>()
	must('issue', await issueAgreement(designer, { agreement, version, signBy, once }, stamp()))
}

/** Issues a year's agreement to a client, about the first two containers of each of their places. */
export async function issueTo(to: To, client: ClientId, from: Day): Promise<Id<'agreement'>> {
	const beginning = { client, terms: await termsFor(to, client, from) }
	const { id } = must('begin', await beginAgreement(to.designer, beginning, to.stamp()))
	await issue(to, id, 1)
	return id
}

/** Issues it anew, under another law. */
export async function amend(to: To, agreement: Id<'agreement'>, client: ClientId, from: Day): Promise<void> {
	const terms = await termsFor(to, client, from)
	const changed = { ...terms, said: { ...terms.said, law: 'the Commonwealth of Ostmark' } }
	const saving = { agreement, version: 1, terms: changed }
	const { version } = must('save', await saveTerms(to.designer, saving, to.stamp()))
	await issue(to, agreement, version)
}
