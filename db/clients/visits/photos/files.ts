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
import { id, isId, type PhotoId } from '@/lib/units/id'
import type { PhotoSize, photoSizes } from '@/lib/visit/photo'
import { dataFolder } from '../../../open'

const sizes = ['large', 'small'] as const satisfies readonly PhotoSize[]
const made = /^(.{36})-(?:large|small)\.jpg(?:\.coming)?$/

const photoFolder = () => join(dataFolder(), 'photos')
const fileOf = (photo: PhotoId, size: PhotoSize) => join(photoFolder(), `${photo}-${size}.jpg`)

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

/** Both files of a photo, each whole under its name or not there. */
export function writePhoto(photo: PhotoId, bytes: Readonly<Record<keyof typeof photoSizes, Uint8Array>>): void {
	mkdirSync(photoFolder(), { recursive: true, mode: 0o700 })
	for (const size of sizes) {
		const coming = `${fileOf(photo, size)}.coming`
		synced(coming, 'w', (file) => writeSync(file, bytes[size]))
		renameSync(coming, fileOf(photo, size))
	}
	synced(photoFolder(), 'r')
}

/** Undefined when the file is not there. */
export function readPhoto(photo: PhotoId, size: PhotoSize): Uint8Array<ArrayBuffer> | undefined {
	try {
		return new Uint8Array(readFileSync(fileOf(photo, size)))
	} catch (error) {
		if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return undefined
		throw error
	}
}

export function removePhotos(photos: readonly PhotoId[]): void {
	for (const photo of photos)
		for (const size of sizes) for (const end of ['', '.coming']) rmSync(`${fileOf(photo, size)}${end}`, { force: true })
}

/** Photos of which there is a file, whole or broken off. */
export function photosOnDisk(): PhotoId[] {
	mkdirSync(photoFolder(), { recursive: true, mode: 0o700 })
	const names = readdirSync(photoFolder()).flatMap((name) => made.exec(name)?.[1] ?? [])
	return [...new Set(names)].filter(isId).map((name) => id<'photo'>(name))
}
