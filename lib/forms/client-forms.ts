import { z } from 'zod'
import { mays } from '../access/viewer'
import { wallKinds } from '../container/site'
import {
	addressField,
	amountField,
	dayField,
	decimalField,
	emptyOr,
	hexField,
	idField,
	onceField,
	text,
} from './fields'
import { zoneField } from './places/zone-field'

const newOr = <Of extends string>() => emptyOr(idField<Of>())

export const clientForm = z
	.strictObject({
		once: onceField,
		client: newOr<'client'>(),
		kind: z.enum(['business', 'household'], 'Choose business or household.'),
		name: text(120, { min: 1 }),
		netDays: z.enum(['15', '30']).transform((value) => (value === '15' ? 15 : 30)),
		exemptCertificate: text(60).transform((value) => (value === '' ? null : value)),
		exemptExpires: emptyOr(dayField),
		studioNote: text(2000, { lines: true }),
	})
	.refine(({ exemptCertificate, exemptExpires }) => (exemptCertificate === null) === (exemptExpires === null), {
		message: 'A certificate has a number and a day on which it expires.',
		path: ['exemptExpires'],
	})

export const contactForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	name: text(120, { min: 1 }),
	address: addressField,
	may: z.enum(mays, 'Choose what they may do.'),
})

export const endContactForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	contact: idField<'contact'>(),
})

export const changeAddressForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	contact: idField<'contact'>(),
	address: addressField,
})

const percentField = decimalField(0, 30).transform((value) => Math.round(value * 1000))

export const placeForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	place: newOr<'place'>(),
	name: text(80, { min: 1 }),
	address: text(300, { min: 1, lines: true }),
	taxPercent: percentField,
	driveMinutes: decimalField(0, 600),
	zone: emptyOr(amountField),
	wallKind: z.enum(wallKinds, 'Choose how the wall is made.'),
	wallHex: hexField,
	doorHex: emptyOr(hexField),
	hardinessZone: zoneField,
	accessNote: text(1000, { lines: true }),
})

export const colourForm = z.strictObject({
	once: onceField,
	client: idField<'client'>(),
	place: idField<'place'>(),
	name: text(40, { min: 1 }),
	hex: hexField,
	side: z.enum(['inside', 'outside']),
})
