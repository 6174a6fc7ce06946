import type { May } from '@/lib/access/viewer'
import type { ClientKey } from './clients'

/** Contacts of clients, by what they are to the story. */
export const people = {
	bakeryApprover: { name: 'Maud Marrowby', address: 'maud@marrowbybakery.example' },
	bakerySecondApprover: { name: 'Hew Marrowby', address: 'hew@marrowbybakery.example' },
	bakeryViewer: { name: 'Pia Tallowmere', address: 'pia@marrowbybakery.example' },
	dentalApprover: { name: 'Dr. Sunniva Lindquay', address: 'sunniva@lindquaydental.example' },
	dentalViewer: { name: 'Orla Fennimarsh', address: 'desk@lindquaydental.example' },
	innApprover: { name: 'Corwin Gorsehaven', address: 'corwin@threehawsers.example' },
	innViewer: { name: 'Bettany Gorsehaven', address: 'bettany@threehawsers.example' },
	bookshopApprover: { name: 'Leopold Dunnacre', address: 'leopold@dunnacrebooks.example' },
	creditUnionApprover: { name: 'Wilma Sandrake', address: 'wilma@wrenholtcu.example' },
	creditUnionViewer: { name: 'Ansel Thrupley', address: 'ansel@wrenholtcu.example' },
	vetApprover: { name: 'Dr. Rowan Kittiwell', address: 'rowan@kittiwellvets.example' },
	twoDoors: { name: 'Hester Kittiwell', address: 'hester@kittiwellvets.example' },
	bicyclesApprover: { name: 'Jory Ostleigh', address: 'jory@ostleighcycles.example' },
	chandleryApprover: { name: 'Barnaby Sallowby', address: 'barnaby@sallowbychandlers.example' },
	clapboardApprover: { name: 'Nell Tavendry', address: 'nell@tavendry.example' },
	clapboardViewer: { name: 'Ivor Tavendry', address: 'ivor@tavendry.example' },
	fieldstoneApprover: { name: 'Sidony Pellwick', address: 'sidony@pellwick.example' },
	stuccoApprover: { name: 'Caspar Merrowin', address: 'caspar@merrowin.example' },
	approvedApprover: { name: 'Edda Brackwater', address: 'edda@brackwater.example' },
	skippedApprover: { name: 'Linus Harrowmere', address: 'linus@harrowmere.example' },
	withdrawnApprover: { name: 'Thea Oakshadow', address: 'thea@oakshadow.example' },
	cancelledApprover: { name: 'Magnus Corridene', address: 'magnus@corridene.example' },
	installedApprover: { name: 'Greta Ambrelow', address: 'greta@ambrelow.example' },
	unpricedApprover: { name: 'Piran Gorsdale', address: 'piran@gorsdale.example' },
	newcomerApprover: { name: 'Ottilie Fennaway', address: 'ottilie@fennaway.example' },
} as const

export type PersonKey = keyof typeof people

type Door = readonly [client: ClientKey, person: PersonKey, may: May]

/** Who comes in at which client's door; Hester Kittiwell has two: her sister lives at the Pellwicks'. */
export const doors: readonly Door[] = [
	['bakery', 'bakeryApprover', 'approve'],
	['bakery', 'bakerySecondApprover', 'approve'],
	['bakery', 'bakeryViewer', 'look'],
	['dental', 'dentalApprover', 'approve'],
	['dental', 'dentalViewer', 'look'],
	['inn', 'innApprover', 'approve'],
	['inn', 'innViewer', 'look'],
	['bookshop', 'bookshopApprover', 'approve'],
	['creditUnion', 'creditUnionApprover', 'approve'],
	['creditUnion', 'creditUnionViewer', 'look'],
	['vet', 'vetApprover', 'approve'],
	['vet', 'twoDoors', 'approve'],
	['bicycles', 'bicyclesApprover', 'approve'],
	['chandlery', 'chandleryApprover', 'approve'],
	['clapboard', 'clapboardApprover', 'approve'],
	['clapboard', 'clapboardViewer', 'look'],
	['fieldstone', 'fieldstoneApprover', 'approve'],
	['fieldstone', 'twoDoors', 'look'],
	['stucco', 'stuccoApprover', 'approve'],
	['approved', 'approvedApprover', 'approve'],
	['skipped', 'skippedApprover', 'approve'],
	['withdrawn', 'withdrawnApprover', 'approve'],
	['cancelled', 'cancelledApprover', 'approve'],
	['installed', 'installedApprover', 'approve'],
	['unpriced', 'unpricedApprover', 'approve'],
	['newcomer', 'newcomerApprover', 'approve'],
]
