import { z } from 'zod'
import { currencyCodes } from '../format/money'
import { addressField, idField, onceField, text } from './fields'

const zones = new Set(Intl.supportedValuesOf('timeZone'))

export const settingsForm = z.strictObject({
	name: text(80, { min: 1 }),
	timeZone: z.string().refine((zone) => zones.has(zone) || zone === 'UTC', 'Choose a time zone from the list.'),
	currency: z
		.string()
		.refine((code) => currencyCodes.some((known) => known === code), 'Choose a currency from the list.'),
	lengths: z.enum(['in', 'cm'], 'Choose inches or centimetres.'),
})

export const setUpForm = settingsForm.extend({ designer: text(80, { min: 1 }), address: addressField })

export const hireForm = z.strictObject({ once: onceField, helper: text(80, { min: 1 }), address: addressField })

export const endStaffForm = z.strictObject({ once: onceField, member: idField<'person'>() })

export const timeZones = ['UTC', ...zones]
