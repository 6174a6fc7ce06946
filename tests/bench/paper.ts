import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { agreementPdf } from '@/app/server/pdf/agreement'
import { sealKey } from '@/app/server/pdf/seal/seal-key'
import { sealPdf } from '@/app/server/pdf/seal/seal-pdf'
import { quarters } from '@/lib/season/season'
import { cents } from '@/lib/units/cents'
import { at, paper } from '../app/pdf/sample'
import { issued } from '../lib/agreement/document/issued'
import { containerId, facts, placeId, terms } from '../lib/agreement/sample'
import { median, row } from './row'

/** A year under an agreement: four seasons, six containers at two places. */
const six = [1, 2, 3, 4, 5, 6].map((n) => ({
	...{ id: containerId(n), place: placeId(n < 4 ? 1 : 2), name: `Urn ${n}`, words: `urn, ${14 + n} in across` },
}))
const seasons = quarters.map((quarter, n) => ({
	...{ quarter, year: 2027, price: { is: 'fixed', cents: cents(61_250 + n * 977) } as const },
	containers: six.map(({ id }) => id),
	visits: [{ kind: 'install', count: 1 } as const, { kind: 'watering', count: 3 + n } as const],
}))
const year = paper(issued({ ...terms, seasons }, { ...facts, containers: six }))

async function msOf(act: () => Promise<unknown>, { warm, rounds }: { warm: number; rounds: number }): Promise<number> {
	const times: number[] = []
	for (let n = 0; n < warm + rounds; n += 1) {
		const start = performance.now()
		await act()
		if (n >= warm) times.push(performance.now() - start)
	}
	return median(times)
}

const drawn = await msOf(() => agreementPdf(year), { warm: 8, rounds: 15 })
row('PDF of an agreement of four seasons and six containers', `${drawn.toFixed(0)} ms`, 'under 400 ms', drawn < 400)

const folder = mkdtempSync(join(tmpdir(), 'doorsill-bench-'))
const start = performance.now()
const key = sealKey(folder, { password: undefined, file: undefined }, new Date(at(0)))
const made = performance.now() - start
const bytes = await agreementPdf(year)
const sealing = await msOf(() => sealPdf(bytes, key, at(8)), { warm: 3, rounds: 15 })
rmSync(folder, { recursive: true })
row('making the key that seals, once', `${made.toFixed(0)} ms`, 'under 5000 ms', made < 5000)
row('sealing it', `${sealing.toFixed(0)} ms`, 'under 100 ms', sealing < 100)
const kb = (await sealPdf(bytes, key, at(8))).length / 1024
row('the sealed file', `${kb.toFixed(0)} kB`, 'under 150 kB', kb < 150)
