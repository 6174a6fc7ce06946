import { z } from 'zod'
import type { Shown } from '../../proposal/offer/scene-of'
import { isId } from '../../units/id'

/** How a picture is cut: width over height, and whether it shows the whole place or one pot near by. */
export const cuts = {
	wide: { ratio: 2.1, zoom: 'place' },
	full: { ratio: 1.5, zoom: 'place' },
	phone: { ratio: 1.05, zoom: 'place' },
	slim: { ratio: 2.6, zoom: 'place' },
	panel: { ratio: 0.72, zoom: 'pot' },
	tall: { ratio: 0.5, zoom: 'pot' },
	thumbnail: { ratio: 1.27, zoom: 'pot' },
} as const
export type Cut = keyof typeof cuts

export type PictureAsk = Shown & { readonly cut: Cut }

const keys = z.array(z.string().max(40)).max(60)
const ask = z.strictObject({
	cut: z.enum(['wide', 'full', 'phone', 'slim', 'panel', 'tall', 'thumbnail']),
	place: z.string().refine((value) => value === '' || isId(value)),
	option: z.string().max(40),
	extra: keys,
	without: keys,
	hour: z.enum(['day', 'evening']),
	measure: z.enum(['none', 'cm', 'in']),
})

/** The query of a picture's address. An empty place is the first; an empty option shows the containers bare. */
export function pictureQuery({ cut, place, option, extras, leftOut, hour, measure }: PictureAsk): string {
	const query = new URLSearchParams({ cut, place, option: option ?? '', hour, measure })
	for (const key of extras) query.append('extra', key)
	for (const id of leftOut) query.append('without', id)
	return query.toString()
}

/** What a picture's address asks for; undefined for any other query. */
export function readPictureQuery(query: URLSearchParams): PictureAsk | undefined {
	const one = (name: string, otherwise = '') => query.get(name) ?? otherwise
	const found = ask.safeParse({
		...{ cut: one('cut', 'full'), place: one('place'), option: one('option'), hour: one('hour', 'day') },
		...{ extra: query.getAll('extra'), without: query.getAll('without'), measure: one('measure', 'none') },
	})
	if (!found.success) return undefined
	const { cut, place, option, extra, without, hour, measure } = found.data
	const shown = { place, option: option === '' ? null : option, extras: extra, leftOut: without, hour, measure }
	return { cut, ...shown }
}
