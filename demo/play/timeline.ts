import type { Stamp } from '@/db/stamp'
import { addDays, type Day, type Moment, moment } from '@/lib/units/day'

/** A day from today at a time of UTC; from 13:00 to 22:00 it is daytime in the town, in summer and in winter. */
export const momentOn = (today: Day, on: number, at: string): Moment =>
	moment(new Date(`${addDays(today, on)}T${at}:00.000Z`))

export type Act = { readonly at: Moment; readonly run: (stamp: Stamp) => Promise<void> }

/** Plays every act in the order of time; those of one moment in the order in which they are written. */
export async function play(acts: readonly Act[], stamps: (at: Moment) => Stamp): Promise<void> {
	const inOrder = acts.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
	for (const { at, run } of inOrder) await run(stamps(at))
}
