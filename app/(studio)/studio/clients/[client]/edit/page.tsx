import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { idIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { clientPage } from '@/db/clients/read-clients'
import { ClientForm } from '../../client-form'

export const metadata: Metadata = { title: 'Change a client' }

export default async function EditClient({ params, searchParams }: PageProps<'/studio/clients/[client]/edit'>) {
	const { client: text } = await params
	const { who, frame } = await studioPage(`/studio/clients/${text}/edit`, 'change clients')
	const page = await clientPage(who, idIn<'client'>(text))
	if (page === undefined) hide(who)
	const { id, kind, name, netDays, exemptCertificate, exemptExpires, studioNote } = page.client
	const saved = {
		client: id,
		kind,
		name,
		netDays: String(netDays),
		exemptCertificate: exemptCertificate ?? '',
		exemptExpires: exemptExpires ?? '',
		studioNote,
	}
	return (
		<StudioFrame {...frame} here="Clients">
			<h1 className="text-4xl font-extrabold tracking-tight">{name}</h1>
			<ClientForm attempt={await attemptFor(who, (await searchParams).form)} saved={saved} />
		</StudioFrame>
	)
}
