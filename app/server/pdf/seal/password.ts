import { randomBytes } from 'node:crypto'
import { existsSync, readFileSync } from 'node:fs'
import { mustBePrivate, writeOnce } from './kept-file'

/** Where the seal's password comes from: the environment, a file that it names, or neither. */
export type PasswordFrom = { readonly password: string | undefined; readonly file: string | undefined }

function fromFile(file: string): string {
	mustBePrivate(file, '600')
	const [password = ''] = readFileSync(file, 'utf8').split('\n')
	if (password === '') throw new Error(`${file} holds no password in its first line.`)
	return password
}

/**
 * The password of the seal's key. Where the studio names none, one is made and kept beside the key: it then guards the
 * key no better than the folder does.
 * @throws with one sentence when it is not there, or can be read by others
 */
export function sealPassword({ password, file }: PasswordFrom, beside: string, isKeyThere: boolean): string {
	if (password !== undefined) return password
	if (file !== undefined) {
		if (!existsSync(file)) throw new Error(`SEAL_PASSWORD_FILE names ${file}, which is not there.`)
		return fromFile(file)
	}
	if (!existsSync(beside)) {
		if (isKeyThere) throw new Error(`The seal’s password is not in ${beside}: set SEAL_PASSWORD or SEAL_PASSWORD_FILE.`)
		writeOnce(beside, Buffer.from(`${randomBytes(32).toString('base64url')}\n`))
	}
	return fromFile(beside)
}
