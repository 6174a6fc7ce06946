import { existsSync } from 'node:fs'
import { isDemo, start } from '@/db/start/start'
import { isSealThere, sealKey } from '../pdf/seal/seal-key'
import { env } from './env'
import { siteKey } from './key'

/** Everything that has to hold before the first request. @throws with one clear sentence */
export function startSite(): void {
	const { dataDir, isDemo: asDemo, sealPassword } = env()
	const marked = existsSync(dataDir) && isDemo(dataDir)
	if (marked && !asDemo) throw new Error(`${dataDir} holds a demo. Set DATA_DIR to a folder of your own.`)
	if (asDemo && !marked) throw new Error(`DEMO is set, but ${dataDir} holds no demo.`)
	start(dataDir)
	siteKey(dataDir)
	if (isSealThere(dataDir)) sealKey(dataDir, sealPassword, new Date())
}
