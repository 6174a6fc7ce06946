import { eq } from 'drizzle-orm'
import { sha256 } from '@/lib/record/hash'
import type { PersonId } from '@/lib/units/id'
import type { Tx } from '../open'
import { enqueue } from '../outbox/enqueue'
import { knownDevice } from '../schema'
import type { Stamp } from '../stamp'

/** The browser that somebody comes in with. */
export type Arrival = {
	/** What the browser's own cookie holds. */
	readonly browser: string
	/** What a person would call it: "Firefox on Android". */
	readonly words: string
	/** How its holder showed that the mailbox is theirs. */
	readonly by: 'link' | 'code'
	readonly stamp: Stamp
}

/** Of two persons at one browser no hash tells that it is the same. */
const hashOf = (person: PersonId, browser: string) => sha256(`browser ${person} ${browser}`)

/** Remembers a browser of theirs. One that is new is told to them by mail, but for the first: nothing is there to compare it with. */
export function noteArrival(tx: Tx, personId: PersonId, { browser, words, stamp }: Arrival): void {
	const hash = hashOf(personId, browser)
	const known = tx.select().from(knownDevice).where(eq(knownDevice.personId, personId)).all()
	if (known.some((each) => each.hash === hash)) return
	tx.insert(knownDevice).values({ personId, hash, words, firstAt: stamp.at }).run()
	if (known.length === 0) return
	enqueue(tx, stamp, { message: 'new device', person: personId, facts: { at: stamp.at, device: words } })
}

/** Every browser of theirs is strange again. One that nobody has stays known, so that the next to come is not the first. */
export function forgetBrowsers(tx: Tx, personId: PersonId, stamp: Stamp): void {
	tx.delete(knownDevice).where(eq(knownDevice.personId, personId)).run()
	const nobodys = Buffer.from(stamp.salt()).toString('hex')
	tx.insert(knownDevice)
		.values({ personId, hash: hashOf(personId, nobodys), words: '', firstAt: stamp.at })
		.run()
}
