import { closeSync, fsyncSync, linkSync, openSync, rmSync, statSync, writeSync } from 'node:fs'
import { dirname } from 'node:path'

function synced(path: string, flags: 'wx' | 'r', act: (file: number) => void = () => undefined): void {
	const file = openSync(path, flags, 0o600)
	try {
		act(file)
		fsyncSync(file)
	} finally {
		closeSync(file)
	}
}

const isThere = (error: unknown) => error instanceof Error && 'code' in error && error.code === 'EEXIST'

/** Whole under its name, or not there; one that is there stays (a rename would take its place, a link does not). */
export function writeOnce(path: string, bytes: Uint8Array): void {
	const coming = `${path}.${process.pid}.coming`
	rmSync(coming, { force: true })
	try {
		synced(coming, 'wx', (file) => writeSync(file, bytes))
		linkSync(coming, path)
	} catch (error) {
		if (!isThere(error)) throw error
	} finally {
		rmSync(coming, { force: true })
	}
	synced(dirname(path), 'r')
}

/** @throws when others on the machine could read it */
export function mustBePrivate(path: string, mode: '600' | '700'): void {
	if ((statSync(path).mode & 0o077) !== 0) throw new Error(`${path} can be read by others: chmod ${mode} it.`)
}
