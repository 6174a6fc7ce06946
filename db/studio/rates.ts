import { desc, eq } from 'drizzle-orm'
import type { Viewer } from '@/lib/access/viewer'
import { type Rates, ratesSchema } from '@/lib/pricing/rates'
import { canonical } from '@/lib/record/canonical'
import { sha256 } from '@/lib/record/hash'
import type { Reading, Tx } from '../open'
import { append } from '../record/append'
import { rates } from '../schema'
import type { Stamp } from '../stamp'

export type VersionedRates = { readonly version: number; readonly rates: Rates }

const parsed = ({ version, document }: typeof rates.$inferSelect): VersionedRates => ({
	version,
	rates: ratesSchema.parse(JSON.parse(document)),
})

/** @throws when the studio has none: set-up writes the first version */
export function latestRates(db: Reading): VersionedRates {
	const [newest] = db.select().from(rates).orderBy(desc(rates.version)).limit(1).all()
	if (newest === undefined) throw new Error('latestRates: the studio has no rates')
	return parsed(newest)
}

/** @throws when there was no such version */
export function ratesOf(db: Reading, version: number): Rates {
	const [found] = db.select().from(rates).where(eq(rates.version, version)).all()
	if (found === undefined) throw new Error(`ratesOf: there is no version ${version}`)
	return parsed(found).rates
}

/** A new version; the ones before stay, for the prices that they made. */
export function keepRates(tx: Tx, stamp: Stamp, viewer: Viewer, next: Rates): number {
	const [newest] = tx.select({ version: rates.version }).from(rates).orderBy(desc(rates.version)).limit(1).all()
	const version = (newest?.version ?? 0) + 1
	const madeBy = viewer.is === 'staff' ? viewer.person : null
	const document = canonical(next)
	tx.insert(rates).values({ version, document, madeAt: stamp.at, madeBy }).run()
	append(tx, stamp, viewer, {
		act: 'rates changed',
		object: `rates ${version}`,
		client: null,
		facts: { version, document: sha256(document) },
	})
	return version
}
