import 'server-only'
import { paperOf } from '@/app/documents/pdf/paper'
import { nextPaperDue, type PaperDue } from '@/db/agreements/papers/due'
import { keepPaper } from '@/db/agreements/papers/keep'
import { viewerOf } from '@/db/viewer'
import type { Hash } from '@/lib/record/hash'
import { agreementPdf } from '../../pdf/agreement'
import { sealed } from '../../pdf/seal/studio-seal'
import { stamp } from '../../start/clock'
import { log } from '../../start/log'

async function drawn({ document, signatures, consent, head, at, timeZone, lengths }: PaperDue): Promise<Buffer> {
	const signed = { signatures, consent, head }
	const bytes = await agreementPdf({ document, signed, at, timeZone, paper: paperOf(lengths) })
	return sealed(bytes, stamp().at)
}

/** Drawing one keeps the whole process to itself: others get about as long before the next. */
const restMs = 250
const rest = () => new Promise((resolve) => setTimeout(resolve, restMs))

let making: Promise<number> | undefined

/** One after the other; one that fails is tried again with the next round and keeps none of the others from being made. */
async function round(): Promise<number> {
	const system = await viewerOf('system')
	const failed: Hash[] = []
	let made = 0
	for (;;) {
		const due = await nextPaperDue(system, failed)
		if (due === undefined) return made
		if (made + failed.length > 0) await rest()
		try {
			const kept = await keepPaper(system, { ...due, bytes: await drawn(due) }, stamp())
			made += kept
			if (kept === 0) failed.push(due.hash)
		} catch (error) {
			failed.push(due.hash)
			log().error({ act: 'paper failed', error: error instanceof Error ? error.message : 'unknown' })
		}
	}
}

/** Makes and keeps the file of each document that both have signed and that has none: outside of the signing itself. */
export async function makePapers(): Promise<number> {
	await making
	making = round().finally(() => {
		making = undefined
	})
	return making
}

/** After a signature: begins, and whoever signed does not wait for it. */
export function wakePapers(): void {
	makePapers().catch((error: unknown) =>
		log().error({ act: 'paper failed', error: error instanceof Error ? error.message : 'unknown' }),
	)
}
