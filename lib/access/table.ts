import type { Person } from './viewer'

/** Who may do an act; who sees the thing but may not (403). To all others the thing does not exist (404). */
type Row = {
	readonly may: readonly Person[]
	readonly not?: readonly Person[]
}

const everybody: readonly Person[] = [
	'designer',
	'helper',
	'approver',
	'payer',
	'looker',
	'contact of another client',
	'signed out',
	'system',
]

/** Person × act × thing, written once: the data layer, the pages and the tests read it here. */
export const table = {
	// the studio's own
	'see the studio': { may: ['designer'] },
	'change settings': { may: ['designer'] },
	'see the season': { may: ['designer', 'system'] },
	'plan a season': { may: ['designer'] },
	'see clients': { may: ['designer'] },
	'change clients': { may: ['designer'] },
	'see the catalogue': { may: ['designer'] },
	'change the catalogue': { may: ['designer'] },
	'see what to install': { may: ['designer', 'helper'] },
	'see visits': { may: ['designer', 'helper'] },
	'record visits': { may: ['designer', 'helper'] },
	// a proposal, behind the studio's door
	'see the draft': { may: ['designer'] },
	'change the draft': { may: ['designer'] },
	'see the costing': { may: ['designer'] },
	publish: { may: ['designer'] },
	'steer the proposal': { may: ['designer'] },
	remind: { may: ['designer'] },
	'answer by phone': { may: ['designer'] },
	// a proposal, behind the client's door
	'see the client': { may: ['approver', 'payer', 'looker', 'designer', 'system'] },
	'see the proposal': { may: ['approver', 'payer', 'looker', 'designer', 'system'] },
	'answer the proposal': { may: ['approver'], not: ['payer', 'looker', 'designer'] },
	'mark as seen': { may: ['approver', 'payer', 'looker'], not: ['designer'] },
	'see a photo': { may: ['approver', 'payer', 'looker', 'designer', 'helper'] },
	'say what is wrong': { may: ['approver', 'payer', 'looker'] },
	// agreements
	'see agreements': { may: ['designer', 'system'] },
	'change agreements': { may: ['designer'] },
	'see the agreement': { may: ['approver', 'payer', 'looker', 'designer', 'system'] },
	'read its money': { may: ['approver', 'payer', 'designer', 'system'], not: ['looker'] },
	'sign the agreement': { may: ['approver'], not: ['payer', 'looker', 'designer'] },
	// money
	'see accounts': { may: ['designer', 'system'] },
	'change accounts': { may: ['designer', 'system'] },
	'see the account': { may: ['approver', 'payer', 'designer', 'system'], not: ['looker'] },
	// the record and the machinery
	'see the record': { may: ['designer', 'system'] },
	'erase a client': { may: ['designer'] },
	'send mail': { may: ['system'] },
	'keep house': { may: ['system'] },
	'see a cover': { may: everybody },
	'read mail copies': { may: everybody },
} as const satisfies Record<string, Row>

export type Act = keyof typeof table
