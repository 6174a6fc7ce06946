import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Hash } from '@/lib/record/hash'
import { dataFolder } from '../../open'

const folder = () => join(dataFolder(), 'scans')
const fileOf = (scan: Hash) => join(folder(), `${scan}.jpg`)

/** The picture of a paper signature, under its own SHA-256: whole under its name or not there. */
export function writeScan(scan: Hash, bytes: Uint8Array): void {
	mkdirSync(folder(), { recursive: true, mode: 0o700 })
	const coming = `${fileOf(scan)}.coming`
	writeFileSync(coming, bytes, { mode: 0o600, flush: true })
	renameSync(coming, fileOf(scan))
}

/** Undefined when the file is not there. */
export function scanBytes(scan: Hash): Uint8Array<ArrayBuffer> | undefined {
	try {
		return new Uint8Array(readFileSync(fileOf(scan)))
	} catch (error) {
		if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined
		throw error
	}
}

export function removeScans(scans: readonly Hash[]): void {
	for (const scan of scans) rmSync(fileOf(scan), { force: true })
}
