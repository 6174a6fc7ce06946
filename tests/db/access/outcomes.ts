import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import type { Hash } from '@/lib/record/hash'
import type { Moment } from '@/lib/units/day'
import type {
	ClientId,
	ContainerId,
	Id,
	MaterialId,
	PersonId,
	PhotoId,
	PlaceId,
	ProposalId,
	SeasonId,
	VisitId,
} from '@/lib/units/id'

/** The things of one client. */
export type Things = {
	readonly client: ClientId
	readonly place: PlaceId
	readonly container: ContainerId
	readonly colour: Id<'site colour'>
	/** Of the same place. */
	readonly otherColour: Id<'site colour'>
	readonly contact: Id<'contact'>
	readonly person: PersonId
	readonly proposal: ProposalId
	readonly revision: Hash
	readonly version: number
	/** Of what the client's approver typed. */
	readonly attempt: Id<'once'>
	/** The number of one that was sent to them. */
	readonly invoice: string
	readonly visit: VisitId
	readonly photo: PhotoId
	/** Issued, and what was issued; the other is still being written. */
	readonly agreement: Id<'agreement'>
	readonly document: Hash
	readonly unissued: Id<'agreement'>
	/** Signed on paper, and what was signed. */
	readonly held: Id<'agreement'>
	readonly heldDocument: Hash
}
/** The things of the studio. */
export type House = {
	readonly season: SeasonId
	/** One that nobody has a proposal for. */
	readonly unbegun: SeasonId
	readonly helper: PersonId
	readonly material: MaterialId
	/** Of which storage holds some. */
	readonly stored: MaterialId
	readonly mail: Id<'mail'>
	/** Key of the cover of some client's proposal: who holds it sees that one, whoever they are. */
	readonly cover: string
	readonly once: () => Id<'once'>
	readonly stamp: (at?: Moment) => Stamp
}

export const persons = ['designer', 'helper', 'approver', 'looker', 'of another client', 'nobody', 'system'] as const
export type Person = (typeof persons)[number]

/** `none`: undefined, an empty list or nothing counted. `done`: nothing said, something written. */
export type Outcome = 'value' | 'done' | 'none' | 'hidden' | 'forbidden'

type Call = (viewer: Viewer, things: Things, house: House) => Promise<unknown>
export type Row = {
	readonly call: Call
	readonly of: 'client' | 'studio'
	readonly gives: Readonly<Record<Person, Outcome>>
}

/** What each gets, in the order of `persons`; one for all of a kind where the kind is given alone. */
export const to = (
	...[designer, helper, approver, looker, other, nobody, system]: readonly [
		Outcome,
		Outcome,
		Outcome,
		Outcome,
		Outcome,
		Outcome,
		Outcome,
	]
) => ({
	designer,
	helper,
	approver,
	looker,
	'of another client': other,
	nobody,
	system,
})

export const row =
	(of: Row['of'], gives: Row['gives']) =>
	(call: Call): Row => ({ of, gives, call })

export const designerReads = to('value', 'none', 'none', 'none', 'none', 'none', 'none')
export const designerDoes = to('value', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden')
export const designerAndSystemRead = to('value', 'none', 'none', 'none', 'none', 'none', 'value')
export const systemReads = to('none', 'none', 'none', 'none', 'none', 'none', 'value')
export const systemDoes = to('none', 'none', 'none', 'none', 'none', 'none', 'done')
export const approverAnswers = to('forbidden', 'hidden', 'value', 'forbidden', 'hidden', 'hidden', 'hidden')
export const everybodyReads = to('value', 'value', 'value', 'value', 'value', 'value', 'value')
export const everybodyDoes = to('done', 'done', 'done', 'done', 'done', 'done', 'done')

export const staffReads = to('value', 'value', 'none', 'none', 'none', 'none', 'none')
export const staffDoes = to('value', 'value', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden')
export const contactReads = to('none', 'none', 'value', 'value', 'none', 'none', 'none')
export const contactSays = to('hidden', 'hidden', 'value', 'value', 'hidden', 'hidden', 'hidden')
