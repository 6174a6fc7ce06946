import { open } from '../site/here'
import { record } from '../site/snapshot'
import { thingsOf } from '../site/things'
import { type Row, rows } from '../table/rows'

/** The addresses of a client's pages. */
export const pathsOf = (client: string, proposals: readonly string[]) => [
	`/home/${client}`,
	`/home/${client}/visits`,
	`/home/${client}/account`,
	`/home/${client}/account/csv`,
	`/home/${client}/account/pdf`,
	`/home/${client}/wrong`,
	...proposals.flatMap((id) =>
		['', '/approve', '/change', '/skip', '/done', '/pdf'].map((page) => `/proposal/${id}${page}`),
	),
]

/** Every address of theirs with each palette picked, each extra added and each container left out. */
export function choicesOf(client: string): string[] {
	const sql =
		'SELECT p.id, s.body FROM proposal p JOIN revision r ON r.hash = p.revision_hash JOIN sealed_text s ON s.hash = r.offer_hash WHERE p.client_id = ?'
	const found = record(open.site.folder, (db) => db.prepare<[string], { id: string; body: string }>(sql).all(client))
	return found.flatMap(({ id, body }) => {
		const { options, extras, containers, places } = JSON.parse(body)
		const named = (name: string, of: readonly { key?: string; id?: string }[]) =>
			of.map(({ key, id: own }) => `${name}=${key ?? own}`)
		const [all, added, out] = [named('option', options), named('extra', extras), named('without', containers)]
		const mixed = named('option', options.slice(0, 1)).flatMap((one) =>
			places.slice(1).map(({ id: place }: { id: string }) => `${one}&at.${place}=${options.at(-1).key}`),
		)
		return [...all, ...mixed, `${all[0]}&${added.join('&')}`, ...out.map((each) => `${all[0]}&${each}`)].flatMap(
			(query) => [`/proposal/${id}?${query}`, `/proposal/${id}/approve?${query}`],
		)
	})
}

/** A row's address, about a thing. */
export const filled = ({ route, path }: Row, id: string) => path ?? route.replace(/\[[^\]]+\]/, id)

/** Every address of the table, about the bakery's proposal. */
export function shownToNobodyElse(): string[] {
	const { proposal } = thingsOf(open.site.folder, open.site.cast, 'bakery')
	return rows.filter(({ method }) => method === 'GET').map((row) => filled(row, proposal))
}
