import type { Moment } from '@/lib/units/day'
import { env } from '../../start/env'
import type { SealKey } from './cms'
import { sealKey } from './seal-key'
import { sealPdf } from './seal-pdf'

let kept: SealKey | undefined

/** A file sealed with this studio's key, which is made when the first one is. */
export function sealed(bytes: Buffer, at: Moment): Promise<Buffer> {
	kept ??= sealKey(env().dataDir, env().sealPassword, new Date(at))
	return sealPdf(bytes, kept, at)
}
