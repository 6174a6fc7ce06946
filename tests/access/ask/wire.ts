import { connect } from 'node:net'

/** Sends bytes as they are, which no client library would, and hands back what came; the site may go on waiting for more. */
export function wire(origin: string, request: string): Promise<string> {
	const { hostname, port } = new URL(origin)
	return new Promise((resolve, reject) => {
		const chunks: Buffer[] = []
		const socket = connect(Number(port), hostname, () => socket.write(request))
		const came = () => Buffer.concat(chunks).toString('utf8')
		socket.setTimeout(1500, () => {
			socket.destroy(chunks.length === 0 ? new Error('The site did not answer.') : undefined)
			resolve(came())
		})
		socket.on('data', (chunk: Buffer) => chunks.push(chunk))
		socket.on('error', reject)
		socket.on('close', () => resolve(came()))
	})
}

export const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1] ?? 0)
