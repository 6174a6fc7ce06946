import { keeping } from '@/app/server/visits/keeping'
import { commandOf, mayRecord, wentOf } from '@/app/server/visits/recording'
import { keepVisit } from '@/db/clients/visits/keep-visit'
import { id } from '@/lib/units/id'
import { visitForm } from '@/lib/visit/form'
import { mostPhotos } from '@/lib/visit/photo'

/** A visit is planned, written down as made, put right or dropped. */
export async function POST(
	request: Request,
	{ params }: RouteContext<'/studio/visits/[visit]/keep'>,
): Promise<Response> {
	const { visit } = await params
	return keeping(request, visit, {
		schema: visitForm,
		lists: ['out'],
		sides: ['before', 'after'],
		most: mostPhotos.visit,
		page: `/studio/visits/${visit}`,
		mayDo: mayRecord,
		keep: async (who, { once: _, do: step, day, ...written }, photos, stamp) => {
			const command = commandOf(step, day)
			return wentOf(await keepVisit(who, id<'visit'>(visit), { command, written, photos }, stamp), step)
		},
	})
}
