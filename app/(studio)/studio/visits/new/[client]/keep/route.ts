import { keeping } from '@/app/server/visits/keeping'
import { commandOf, mayRecord, wentOf } from '@/app/server/visits/recording'
import { startVisit } from '@/db/clients/visits/keep-visit'
import { id } from '@/lib/units/id'
import { newVisitForm } from '@/lib/visit/form'
import { mostPhotos } from '@/lib/visit/photo'

/** A visit of the studio's own making: to come, or made already. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/visits/new/[client]/keep'>,
): Promise<Response> {
	const { client } = await params
	return keeping(request, client, {
		schema: newVisitForm,
		sides: ['before', 'after'],
		most: mostPhotos.visit,
		page: `/studio/visits/new/${client}`,
		mayDo: mayRecord,
		keep: async (who, { once: _, do: step, day, season, ...rest }, photos, stamp) => {
			const keeping = { command: commandOf(step, day), written: { ...rest, out: [] }, photos }
			return wentOf(await startVisit(who, { client: id<'client'>(client), season }, keeping, stamp), step)
		},
	})
}
