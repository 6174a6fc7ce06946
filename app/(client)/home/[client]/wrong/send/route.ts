import { keeping } from '@/app/server/visits/keeping'
import { mayReport, reportWrong } from '@/db/clients/visits/report-wrong'
import { id } from '@/lib/units/id'
import { wrongForm } from '@/lib/visit/form'
import { mostPhotos } from '@/lib/visit/photo'

const noSeason =
	'We have no season with you yet, so there is nowhere to write this down. Answer any mail of ours instead.'

/** A client says that something is wrong, with photos. */
export async function POST(request: Request, { params }: RouteContext<'/home/[client]/wrong/send'>): Promise<Response> {
	const { client } = await params
	return keeping(request, client, {
		schema: wrongForm,
		sides: ['wrong'],
		most: mostPhotos.wrong,
		page: `/home/${client}/wrong`,
		mayDo: (who) => mayReport(who, id<'client'>(client)),
		keep: async (who, { words, place }, photos, stamp) => {
			const said = await reportWrong(who, id<'client'>(client), { words, place, photos }, stamp)
			if (said.ok) return { to: `/home/${client}/visits?told=reported` }
			return said.why === 'no season' ? { errors: { words: noSeason } } : said
		},
	})
}
