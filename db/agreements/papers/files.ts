import {
	closeSync,
	fsyncSync,
	mkdirSync,
	openSync,
	readdirSync,
	readFileSync,
	renameSync,
	rmSync,
	writeSync,
} from 'node:fs'
import { join } from 'node:path'
import { type Hash, isHash } from '@/lib/record/is-hash'
import { dataFolder } from '../../open'
import { carryFiles } from './carry'

const made = /^(.{64})\.pdf(?:\.coming)?$/

const paperFolder = () => join(dataFolder(), 'papers')
/** Beside the copies of the studio's file. */
const copyFolder = () => join(dataFolder(), 'backup', 'papers')
const fileOf = (document: Hash) => join(paperFolder(), `${document}.pdf`)

/** What was written is on the disk when this returns, also when the machine stops right after. */
function synced(path: string, flags: 'w' | 'r', act: (file: number) => void = () => undefined): void {
	const file = openSync(path, flags, 0o600)
	try {
		act(file)
		fsyncSync(file)
	} finally {
		closeSync(file)
	}
}

/** The file of a document, whole under its name or not there. */
export function writePaper(document: Hash, bytes: Uint8Array): void {
	mkdirSync(paperFolder(), { recursive: true, mode: 0o700 })
	const coming = `${fileOf(document)}.coming`
	synced(coming, 'w', (file) => writeSync(file, bytes))
	renameSync(coming, fileOf(document))
	synced(paperFolder(), 'r')
}

/** Undefined when the file is not there. */
export function paperBytes(document: Hash): Uint8Array<ArrayBuffer> | undefined {
	try {
		return new Uint8Array(readFileSync(fileOf(document)))
	} catch (error) {
		if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined
		throw error
	}
}

/** With their copies. */
export function removePapers(documents: readonly Hash[]): void {
	for (const folder of [paperFolder(), copyFolder()])
		for (const document of documents)
			for (const end of ['', '.coming']) rmSync(join(folder, `${document}.pdf${end}`), { force: true })
}

/** Documents of which there is a file, whole or broken off. */
export function papersOnDisk(): Hash[] {
	mkdirSync(paperFolder(), { recursive: true, mode: 0o700 })
	const names = readdirSync(paperFolder()).flatMap((name) => made.exec(name)?.[1] ?? [])
	return [...new Set(names)].filter(isHash)
}

/** Copies what is not copied yet: a file that is kept never changes. */
export function backUpPapers(): void {
	carryFiles(paperFolder(), copyFolder())
}
