import { Agent, get } from 'node:http'

const connections = 8

function ask(url: string, cookie: string, agent: Agent): Promise<void> {
	return new Promise((resolve, reject) => {
		get(url, { agent, headers: { cookie } }, (response) => {
			if (response.statusCode !== 200) reject(new Error(`${url} answered ${response.statusCode}`))
			response.resume()
			response.once('end', resolve)
		}).once('error', reject)
	})
}

/** Requests per second over `ms`, eight at a time on connections that are kept. */
export async function rate(url: string, cookie: string, ms: number): Promise<number> {
	const agent = new Agent({ keepAlive: true, maxSockets: connections })
	let answered = 0
	const until = Date.now() + ms
	const start = Date.now()
	const worker = async () => {
		while (Date.now() < until) {
			await ask(url, cookie, agent)
			answered += 1
		}
	}
	await Promise.all(Array.from({ length: connections }, worker))
	agent.destroy()
	return (answered * 1000) / (Date.now() - start)
}
