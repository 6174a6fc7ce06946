import type { Vessel } from '@/lib/container/card'
import { faultsOf } from '@/lib/container/problem'

/** What is wrong with a vessel as sentences alone. */
export const problemOf = (vessel: Vessel, sillToGlassCm: number | null = null): string[] =>
	faultsOf(vessel, sillToGlassCm).map(({ says }) => says)
