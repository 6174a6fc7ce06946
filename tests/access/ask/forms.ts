import type { Sending } from './send'

/** Fields in the order of the form; bytes for what is no text. */
export type Fields = readonly (readonly [name: string, value: string | Buffer])[]
export type Body = Required<Pick<Sending, 'body'>> & { readonly headers: { readonly 'content-type': string } }

/** The same form with other values in the fields that `others` name. */
export const over = (fields: Fields, others: Fields): Fields =>
	fields.map(([name, value]) => [name, others.find(([other]) => other === name)?.[1] ?? value])

/** The same form with another value in one field, wherever that stands in it; one that it lacks comes last. */
export const withField = (fields: Fields, name: string, value: string | Buffer): Fields =>
	fields.some(([each]) => each === name) ? over(fields, [[name, value]]) : [...fields, [name, value]]

const edge = 'doorsill-test-7d1f0a52'

/** multipart/form-data (RFC 7578); names as the URL standard escapes them. */
export function multipart(fields: Fields): Body {
	const parts = fields.flatMap(([name, value]) => [
		Buffer.from(
			`--${edge}\r\nContent-Disposition: form-data; name="${name.replaceAll('"', '%22').replaceAll('\r\n', '%0D%0A')}"\r\n\r\n`,
		),
		Buffer.from(value),
		Buffer.from('\r\n'),
	])
	const body = Buffer.concat([...parts, Buffer.from(`--${edge}--\r\n`)])
	return { body, headers: { 'content-type': `multipart/form-data; boundary=${edge}` } }
}

const percentBytes = (bytes: Buffer) => [...bytes].map((byte) => `%${byte.toString(16).padStart(2, '0')}`).join('')

export function urlencoded(fields: Fields): Body {
	const text = (value: string | Buffer) =>
		typeof value === 'string' ? new URLSearchParams({ v: value }).toString().slice(2) : percentBytes(value)
	return {
		body: fields.map(([name, value]) => `${text(name)}=${text(value)}`).join('&'),
		headers: { 'content-type': 'application/x-www-form-urlencoded' },
	}
}

export function json(value: unknown): Body {
	return {
		body: typeof value === 'string' ? value : JSON.stringify(value),
		headers: { 'content-type': 'application/json' },
	}
}

type Called = { readonly body: Buffer | string; readonly headers: Record<string, string> }

/** A server action as React calls it: the form is argument one, its fields prefixed with the number of the part. */
export function called(action: string, fields: Fields): Called {
	const numbered = fields.map(([name, value]) => [`_1_${name}`, value] as const)
	const { body, headers } = multipart([...numbered, ['0', '["$K1"]']])
	return { body, headers: { ...headers, 'next-action': action, accept: 'text/x-component' } }
}

/** The same without scripts: the form itself is posted, and one field names the action. */
export const posted = (action: string, fields: Fields): Called => multipart([[`$ACTION_ID_${action}`, ''], ...fields])
