'use server'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction, type Went } from '@/app/server/studio/studio-action'
import { type ChangedCollection, changeCollection } from '@/db/studio/collection/change'
import { collectionExtraForm, collectionWordsForm, designForm } from '@/lib/forms/catalogue/collection-form'

const act = 'change the catalogue'
const pageOf = (season: unknown, part = '') => `/studio/season/${String(season)}/collection${part}`

const says = {
	'saved elsewhere':
		'The collection was changed in another window meanwhile. What you typed is below: save it again to put it over.',
	'not there': 'This was removed in another window meanwhile.',
	'too many': 'There are as many as a collection can hold: change or remove one of them.',
	unknown: 'One of the things chosen is not known here any more: choose another.',
} as const

async function went(done: ChangedCollection, season: string): Promise<Went> {
	if (done.ok) return { to: pageOf(season, '?told=saved') }
	if (isDenied(done)) return refused(done)
	if (done.why === 'name taken') return { errors: { name: 'Another one in this collection has that name.' } }
	return { errors: { form: says[done.why] } }
}

export async function saveCollectionWords(form: FormData): Promise<void> {
	await studioAction(
		form,
		{ act, schema: collectionWordsForm, page: ({ season }) => pageOf(season) },
		async (who, { once, season, version, ...words }) => {
			const change = { is: 'words', ...words } as const
			return went(await changeCollection(who, { season, version, change }, stamp(once)), season)
		},
	)
}

export async function saveDesign(form: FormData): Promise<void> {
	await studioAction(
		form,
		{
			act,
			schema: designForm,
			lists: ['colour', 'hex'],
			page: ({ season, design }) => pageOf(season, `?design=${encodeURIComponent(String(design) || 'new')}`),
		},
		async (who, { once, season, version, design: key, does, ...design }) => {
			const isDrop = does === 'drop' && key !== null
			const change = isDrop
				? ({ is: 'drop', of: 'designs', key } as const)
				: ({ is: 'design', design: { key, ...design } } as const)
			return went(await changeCollection(who, { season, version, change }, stamp(once)), season)
		},
	)
}

export async function saveCollectionExtra(form: FormData): Promise<void> {
	await studioAction(
		form,
		{
			act,
			schema: collectionExtraForm,
			lists: ['material', 'count', 'holding'],
			page: ({ season, extra }) => pageOf(season, `?extra=${encodeURIComponent(String(extra) || 'new')}`),
		},
		async (who, { once, season, version, extra: key, does, ...extra }) => {
			const isDrop = does === 'drop' && key !== null
			const change = isDrop
				? ({ is: 'drop', of: 'extras', key } as const)
				: ({ is: 'extra', extra: { key, ...extra } } as const)
			return went(await changeCollection(who, { season, version, change }, stamp(once)), season)
		},
	)
}
