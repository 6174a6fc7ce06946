import type { Instrumentation } from 'next'

export async function register(): Promise<void> {
	if (process.env.NEXT_RUNTIME !== 'nodejs') return
	const { begin } = await import('./app/server/start/begin')
	await begin()
}

export const onRequestError: Instrumentation.onRequestError = async (error, request, context) => {
	if (process.env.NEXT_RUNTIME !== 'nodejs') return
	const { reportError } = await import('./app/server/start/report-error')
	reportError(error, { method: request.method, route: context.routePath })
}
