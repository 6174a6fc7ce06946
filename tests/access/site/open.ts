import { type Site, startSite } from '@/e2e/site/server'
import { type Answer, type Sending, send } from '../ask/send'
import { template } from '../template'
import { type Credentials, everybody, type PersonName } from './people'
import { openPostbox, type Postbox } from './postbox'
import { mailIsOut } from './snapshot'

export type OpenSite = {
	readonly site: Site
	readonly postbox: Postbox
	readonly people: Readonly<Record<PersonName, Credentials>>
	/** A request of one of them. */
	readonly ask: (person: PersonName, path: string, sending?: Sending) => Promise<Answer>
	readonly close: () => Promise<void>
}

const withQuery = (path: string, query: string | undefined) =>
	query === undefined ? path : `${path}${path.includes('?') ? '&' : '?'}${query}`

/** The built site on a fresh copy of the studio, with a real mail server; the mail that waited is out. */
export async function openSite(): Promise<OpenSite> {
	const postbox = await openPostbox()
	const site = await startSite(postbox.url, template)
	await mailIsOut(site.folder)
	const people = everybody(site.folder, site.cast)
	const ask = (person: PersonName, path: string, sending: Sending = {}) => {
		const { query, session, headers } = people[person]
		return send(site.url, withQuery(path, query), { session, ...sending, headers: { ...headers, ...sending.headers } })
	}
	const close = async () => {
		await site.stop()
		await postbox.close()
	}
	return { site, postbox, people, ask, close }
}
