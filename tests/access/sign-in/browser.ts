import { type Fields, urlencoded } from '../ask/forms'
import { type Answer, type Sending, send } from '../ask/send'
import { open } from '../site/here'

/** A browser: keeps the cookies that it is given and sends them back. */
export function browser(more: Sending['headers'] = {}) {
	const jar = new Map<string, string>()
	const visit = async (path: string, sending: Sending = {}): Promise<Answer> => {
		const cookie = [...jar].map(([name, value]) => `${name}=${value}`).join('; ')
		const headers = { ...more, ...sending.headers, ...(cookie !== '' && { cookie }) }
		const answer = await send(open.site.url, path, { ...sending, headers })
		for (const line of answer.headers['set-cookie'] ?? []) {
			const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(line) ?? []
			if (value === '') jar.delete(name)
			else jar.set(name, value)
		}
		return answer
	}
	const post = (path: string, fields: Fields = []) => {
		const { body, headers } = urlencoded(fields)
		return visit(path, { method: 'POST', body, headers })
	}
	return { jar, visit, post }
}
