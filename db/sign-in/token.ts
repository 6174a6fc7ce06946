import { timingSafeEqual } from 'node:crypto'
import { and, desc, eq, gt } from 'drizzle-orm'
import { type Hash, sha256 } from '@/lib/record/hash'
import type { PersonId } from '@/lib/units/id'
import { read, write } from '../open'
import { person, signInToken } from '../schema'

/** As the sign-in library hashes the token of a mailed link: SHA-256 of token and secret. */
export const linkHashOf = (token: string, secret: string): Hash => sha256(`${token}${secret}`)

const tokenMs = 10 * 60_000
const tries = 5

export type Minted = {
	readonly linkHash: Hash
	readonly codeHash: Hash
	readonly askHash: string
	/** Where the mail goes, when somebody is about to send it. */
	readonly address?: string
}

/**
 * Keeps the hashes of a link and a code that are about to be mailed. What the same browser asked for before is void;
 * what another asked for is not, or anybody could void the link in somebody's hands.
 * @returns false when they have another address by now: nothing is kept, and nothing is to be sent
 */
export async function keepToken(personId: PersonId, minted: Minted, now: Date): Promise<boolean> {
	const { linkHash, codeHash, askHash, address } = minted
	return write((tx) => {
		const [found] = tx.select({ email: person.email }).from(person).where(eq(person.id, personId)).all()
		if (found === undefined) throw new Error('keepToken: nobody has this id')
		if (address !== undefined && address !== found.email) return false
		const row = { token: linkHash, codeHash, askHash, triesLeft: tries, expires: new Date(now.valueOf() + tokenMs) }
		tx.insert(signInToken)
			.values({ identifier: found.email, ...row })
			.onConflictDoUpdate({ target: [signInToken.identifier, signInToken.askHash], set: row })
			.run()
		return true
	})
}

/** Whom a link was mailed to and by which browser it was asked for; a look uses nothing up. */
export async function holderOfLink(
	linkHash: Hash,
	now: Date,
): Promise<{ address: string; askHash: string } | undefined> {
	const [found] = read((db) =>
		db
			.select({ address: signInToken.identifier, askHash: signInToken.askHash })
			.from(signInToken)
			.where(and(eq(signInToken.token, linkHash), gt(signInToken.expires, now)))
			.all(),
	)
	return found
}

const same = (a: string, b: string) => a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b))

/**
 * Turns a code, typed in the browser that asked, into a link of which only `linkHash` is known here.
 * A wrong code costs one of five tries; after the last the mail is worth nothing.
 */
export async function tryCode(
	askHash: Hash,
	codeHash: Hash,
	linkHash: Hash,
	now: Date,
): Promise<'right' | 'wrong' | 'over'> {
	return write((tx) => {
		const mine = and(eq(signInToken.askHash, askHash), gt(signInToken.expires, now))
		const [row] = tx.select().from(signInToken).where(mine).orderBy(desc(signInToken.expires)).limit(1).all()
		if (row === undefined || row.triesLeft < 1) return 'over'
		const own = eq(signInToken.token, row.token)
		if (same(row.codeHash, codeHash)) {
			tx.update(signInToken).set({ token: linkHash, triesLeft: 0 }).where(own).run()
			return 'right'
		}
		if (row.triesLeft === 1) {
			tx.delete(signInToken).where(own).run()
			return 'over'
		}
		tx.update(signInToken)
			.set({ triesLeft: row.triesLeft - 1 })
			.where(own)
			.run()
		return 'wrong'
	})
}

/** Who has an address: for the program that prints a demo's links. */
export async function personWith(address: string): Promise<PersonId | undefined> {
	return read((db) => db.select({ id: person.id }).from(person).where(eq(person.email, address)).all())[0]?.id
}
