import fc from 'fast-check'
import type { Job, JobLine } from '@/lib/pricing/job'
import type { Choice } from '@/lib/pricing/quote/choice'
import { cents } from '@/lib/units/cents'
import type { PlaceId } from '@/lib/units/id'
import { chosenJobs, lines } from './arbitrary'

/** One offer with two or three options, which of them each place takes, and what is chosen. */
export type Mixed = {
	readonly jobs: readonly Job[]
	readonly at: ReadonlyMap<PlaceId, number>
	readonly choice: Choice
}

const pots = fc.array(fc.array(lines, { maxLength: 3 }), { minLength: 5, maxLength: 5 })
const another = fc.record({ pots, supplement: fc.integer({ min: 0, max: 8000 }).map(cents) })

/** Options of one offer differ in what is planted and in their supplement, and in nothing else. */
const planted = (job: Job, drawn: readonly (readonly JobLine[])[], supplementCents: Job['supplementCents']): Job => ({
	...job,
	supplementCents,
	containers: job.containers.map((container, n) => ({ ...container, lines: drawn[n] ?? [] })),
})

export const mixedJobs: fc.Arbitrary<Mixed> = fc
	.tuple(
		chosenJobs,
		fc.array(another, { minLength: 1, maxLength: 2 }),
		fc.array(fc.nat(2), { minLength: 3, maxLength: 3 }),
	)
	.map(([{ job, choice }, others, which]) => {
		const jobs = [job, ...others.map(({ pots: drawn, supplement }) => planted(job, drawn, supplement))]
		const at = new Map(job.visits.map(({ place }, n) => [place, (which[n] ?? 0) % jobs.length]))
		return { jobs, at, choice }
	})

/** What a place takes, out of one of each option. */
export const takenAt =
	<T>(of: readonly T[], at: Mixed['at']) =>
	(place: PlaceId): T =>
		of[at.get(place) ?? 0] ?? expectOne()

function expectOne(): never {
	throw new Error('mixedJobs: there is no such option')
}
