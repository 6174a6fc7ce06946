import type { Brand } from '../units/brand'

/** SHA-256 (FIPS 180-4) as 64 lower-case hexadecimal digits. */
export type Hash = Brand<string, 'Hash'>

export const isHash = (text: string): text is Hash => /^[0-9a-f]{64}$/.test(text)
