type Exempt = { readonly certificate: string; readonly expiresIn: number }

export type CastClient = {
	readonly kind: 'business' | 'household'
	readonly name: string
	readonly netDays: 15 | 30
	readonly studioNote: string
	/** `expiresIn` counts days from today. */
	readonly exempt?: Exempt
}

const business = (name: string, netDays: 15 | 30, studioNote: string, exempt?: Exempt) =>
	({ kind: 'business', name, netDays, studioNote, ...(exempt && { exempt }) }) satisfies CastClient
const household = (name: string, studioNote: string) =>
	({ kind: 'household', name, netDays: 30, studioNote }) satisfies CastClient

/** Named by what they are to the story: the first eight are businesses, then the households. */
export const clients = {
	bakery: business('Marrowby Bakery', 15, 'Deliver before five, the ovens are loud and nobody hears the bell after.'),
	dental: business('Lindquay Dental Practice', 30, 'Pays late, always pays. Send the desk a copy.'),
	inn: business('The Three Hawsers Inn', 30, 'Corwin will ask for taller. Quote the first idea a little short.'),
	bookshop: business('Dunnacre Books', 30, 'Wants the magnolia he saw elsewhere. A thin job for us.'),
	creditUnion: business('Wrenholt Harbour Credit Union', 30, 'The board looks at the number on the bill first.', {
		certificate: 'EX-40217-W',
		expiresIn: 420,
	}),
	vet: business('Kittiwell Veterinary Clinic', 15, 'Nothing poisonous to pets near the door, whatever they say.'),
	bicycles: business('Ostleigh Cycles', 15, 'Jory trades repairs for spring bulbs if one lets him.'),
	chandlery: business('Sallowby Ship Chandlery', 30, 'Never answers mail before the boats are out of the water.'),
	clapboard: household('The Tavendry household', 'Nell decides, Ivor pays. Speak to both.'),
	fieldstone: household('The Pellwick household', 'Two terriers that dig. Wire under the moss.'),
	stucco: household('The Merrowin household', 'Likes white in winter, will want one more change.'),
	approved: household('The Brackwater household', 'Lights on a timer of their own, ask before changing it.'),
	skipped: household('The Harrowmere household', 'Away each second winter.'),
	withdrawn: household('The Oakshadow household', 'House is for sale, do not leave our urns there.'),
	cancelled: household('The Corridene household', 'Roof repair until spring, scaffold before the door.'),
	installed: household('The Ambrelow household', 'Wants to be first in the street. Was.'),
	unpriced: household('The Gorsdale household', 'Third idea waits for the price of the blue spruce.'),
	newcomer: household('The Fennaway household', 'Came through the Pellwicks, not measured in full yet.'),
} as const

export type ClientKey = keyof typeof clients
