import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Hash } from '@/lib/record/hash'
import { dataFolder } from '../../open'
import { carryFiles } from '../papers/carry'

const folder = () => join(dataFolder(), 'scans')
/** Beside the copies of the studio's file. */
const copyFolder = () => join(dataFolder(), 'backup', 'scans')
const nameOf = (scan: Hash) => `${scan}.jpg`
const fileOf = (scan: Hash) => join(folder(), nameOf(scan))

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

/** With their copies. */
export function removeScans(scans: readonly Hash[]): void {
	for (const at of [folder(), copyFolder()]) for (const scan of scans) rmSync(join(at, nameOf(scan)), { force: true })
}

/** Copies what is not copied yet: a picture that is kept never changes. */
export function backUpScans(): void {
	carryFiles(folder(), copyFolder())
}
