import 'server-only'
import { randomBytes } from 'node:crypto'
import { v7 } from 'uuid'
import type { Stamp } from '@/db/stamp'
import { moment } from '@/lib/units/day'
import { type Id, id } from '@/lib/units/id'
import { env } from './env'

export const now = (): Date => new Date(Date.now() + env().clockOffsetMs)

/** The clock and the dice of one act; with the key of a form the act goes through once. */
export function stamp(once?: Id<'once'>): Stamp {
	return {
		...(once !== undefined && { once }),
		at: moment(now()),
		id: <Of extends string>() => id<Of>(v7()),
		salt: () => randomBytes(16),
	}
}
