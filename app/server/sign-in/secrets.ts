import 'server-only'
import { randomBytes, randomInt } from 'node:crypto'
import { linkHashOf } from '@/db/sign-in/token'
import { type Hash, sha256 } from '@/lib/record/hash'
import { env } from '../start/env'
import { siteKey } from '../start/key'

let kept: string | undefined

export function secret(): string {
	kept ??= siteKey(env().dataDir)
	return kept
}

/** 256 random bits for a link, a cookie, a session. */
export const randomToken = (): string => randomBytes(32).toString('base64url')

/** Eight digits to type. */
export const randomCode = (): string => String(randomInt(0, 100_000_000)).padStart(8, '0')

export const linkHash = (token: string): Hash => linkHashOf(token, secret())

/** Of a code; the cookie that asked for it keeps two equal codes apart. */
export const codeHash = (code: string, askHash: string): Hash => sha256(`code ${code} ${askHash} ${secret()}`)

export const askHashOf = (ask: string): Hash => sha256(`ask ${ask}`)
