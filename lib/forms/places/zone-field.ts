import { z } from 'zod'

const shape = /^(1[0-3]|[1-9])([ab]?)$/

/** A USDA hardiness zone as the map names it: "5b" becomes 5.5, "5a" and "5" become 5; nothing becomes null. */
export const zoneField = z
	.string()
	.transform((value) => value.trim().toLowerCase())
	.refine((value) => value === '' || shape.test(value), 'Give a hardiness zone such as 5b, or nothing.')
	.transform((value) => {
		const [, whole = '', half = ''] = shape.exec(value) ?? []
		return whole === '' ? null : Number(whole) + (half === 'b' ? 0.5 : 0)
	})

export const zoneText = (zone: number | null): string =>
	zone === null ? '' : `${Math.floor(zone)}${zone % 1 === 0 ? 'a' : 'b'}`
