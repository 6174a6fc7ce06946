import type { Metadata } from 'next'
import { first } from '@/app/server/pages'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listClients } from '@/db/clients/list-clients'
import { Search } from './search'

export const metadata: Metadata = { title: 'Clients' }

const mostLetters = 80

/** By which words, as the address has them: what is longer than the box lets one type is cut. */
const wordsIn = (text: string | string[] | undefined) => (first(text) ?? '').slice(0, mostLetters).trim()

export default async function Clients({ searchParams }: PageProps<'/studio/clients'>) {
	const { who, frame } = await studioPage('/studio/clients', 'see clients')
	const words = wordsIn((await searchParams).q)
	const clients = await listClients(who, words)
	return (
		<StudioFrame {...frame} here="Clients">
			<div className="flex flex-wrap items-baseline justify-between gap-4">
				<h1 className="text-4xl font-extrabold tracking-tight">Clients</h1>
				<a className="act" href="/studio/clients/new">
					Add a client
				</a>
			</div>
			<Search words={words} most={mostLetters} count={clients.length} />
			<section className="overflow-x-auto" aria-label="Clients" hidden={clients.length === 0}>
				<table className="ledger mt-4">
					<thead>
						<tr className="text-sm text-soft">
							<th scope="col">Client</th>
							<th scope="col">Kind</th>
							<th scope="col" className="sum">
								Places
							</th>
							<th scope="col" className="sum">
								Containers
							</th>
						</tr>
					</thead>
					<tbody>
						{clients.map(({ id, name, kind, places, containers }) => (
							<tr key={id}>
								<td>
									<a href={`/studio/clients/${id}`} className="name">
										{name}
									</a>
								</td>
								<td>{kind}</td>
								<td className="sum">{places}</td>
								<td className="sum">{containers}</td>
							</tr>
						))}
					</tbody>
				</table>
			</section>
			{clients.length === 0 && words === '' && (
				<p className="mt-4">Nobody yet. A client has contacts, places and containers.</p>
			)}
		</StudioFrame>
	)
}
