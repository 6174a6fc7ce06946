import type { Metadata } from 'next'
import { attemptFor } from '@/app/server/attempt'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { ClientForm } from '../client-form'

export const metadata: Metadata = { title: 'Add a client' }

export default async function NewClient({ searchParams }: PageProps<'/studio/clients/new'>) {
	const { who, frame } = await studioPage('/studio/clients/new', 'change clients')
	return (
		<StudioFrame {...frame} here="Clients">
			<h1 className="text-4xl font-extrabold tracking-tight">Add a client</h1>
			<ClientForm attempt={await attemptFor(who, (await searchParams).form)} saved={{}} />
		</StudioFrame>
	)
}
