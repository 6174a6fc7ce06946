import { approvals } from './approvals'
import { autumnBusinesses } from './autumn-businesses'
import { autumnHouseholds } from './autumn-households'
import { ours } from './ours'
import { settled } from './settled'
import { waitingBusinesses } from './waiting-businesses'
import { waitingHouseholds } from './waiting-households'

/** Keyed by client: one a season. */
export const winterProposals = { ...waitingBusinesses, ...waitingHouseholds, ...ours, ...approvals, ...settled }
export const autumnProposals = { ...autumnBusinesses, ...autumnHouseholds }

export type WinterKey = keyof typeof winterProposals
export type AutumnKey = keyof typeof autumnProposals

/** Each season's dates in days from today. */
export const seasons = {
	winter: { planned: -34, from: 41, to: 52, answerBy: 3 },
	autumn: { planned: -74, from: -24, to: -14, answerBy: -50 },
} as const
