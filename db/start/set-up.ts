import { eq } from 'drizzle-orm'
import { defaultRates } from '@/lib/pricing/rates'
import type { Hash } from '@/lib/record/hash'
import type { PersonId } from '@/lib/units/id'
import { read, write } from '../open'
import { append } from '../record/append'
import { setUp, staff, studio } from '../schema'
import { insertPerson } from '../sign-in/insert-person'
import type { Stamp } from '../stamp'
import { keepRates } from '../studio/rates'
import type { Settings } from '../studio/studio'
import { viewerOf } from '../viewer'

export type NewStudio = Settings & { readonly designer: string; readonly address: string }

/** Keeps the hash of a fresh set-up link; the one before is void. Only while the studio is nobody's. */
export async function offerSetUp(tokenHash: Hash, { at }: Pick<Stamp, 'at'>): Promise<boolean> {
	return write((tx) => {
		if (tx.select().from(staff).limit(1).all().length > 0) return false
		const row = { tokenHash, madeAt: at }
		tx.insert(setUp)
			.values({ id: 1, ...row })
			.onConflictDoUpdate({ target: setUp.id, set: row })
			.run()
		return true
	})
}

export async function isSetUpLink(tokenHash: Hash): Promise<boolean> {
	return read((db) => db.select().from(setUp).where(eq(setUp.tokenHash, tokenHash)).all()).length === 1
}

/** Makes an empty studio somebody's: the link works once. */
export async function setUpStudio(tokenHash: Hash, made: NewStudio, stamp: Stamp): Promise<PersonId | undefined> {
	const system = await viewerOf('system')
	return write((tx) => {
		const used = tx.delete(setUp).where(eq(setUp.tokenHash, tokenHash)).run().changes === 1
		if (!used) return undefined
		const id = stamp.id<'person'>()
		const { designer, address, ...settings } = made
		tx.insert(studio)
			.values({ id: 1, ...settings, createdAt: stamp.at })
			.run()
		insertPerson(tx, stamp, { id, name: designer, address })
		tx.insert(staff).values({ personId: id, role: 'designer', since: stamp.at }).run()
		append(tx, stamp, system, { act: 'studio set up', object: 'studio', client: null, facts: { designer: id } })
		keepRates(tx, stamp, system, defaultRates)
		return id
	})
}
