import type { Metadata } from 'next'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { type Install, toInstall } from '@/db/proposals/to-install'
import { daySpan } from '@/lib/format/day'
import { list, quantity } from '@/lib/format/words'
import { samePots } from '@/lib/proposal/desk/install-pots'

export const metadata: Metadata = { title: 'To install' }

/** Every approved design for the hands that put it in: where, which pot, what goes in. No price. */
export default async function ToInstall() {
	const { who, frame } = await studioPage('/studio/install', 'see what to install')
	const installs = (await toInstall(who)) ?? []
	const isHelper = who.is === 'staff' && who.role === 'helper'
	return (
		<StudioFrame {...frame} here="To install" isHelper={isHelper}>
			<h1 className="text-4xl font-extrabold tracking-tight">To install</h1>
			{installs.length === 0 && <p className="mt-4 text-lg">Nothing is approved and waiting to go in.</p>}
			{installs.map((install, index) => (
				<One key={install.proposal} install={install} isOpen={index === 0} />
			))}
		</StudioFrame>
	)
}

type Props = { readonly install: Install; readonly isOpen: boolean }

function One({ install: { client, clientId, season, window, palette, places, extras }, isOpen }: Props) {
	return (
		<section className="mt-8 max-w-3xl border-t-2 border-ink pt-2" aria-label={client}>
			<details open={isOpen}>
				<summary className="min-h-11 cursor-pointer">
					<h2 className="inline text-2xl">{client}</h2>
					<span className="block text-soft">
						{palette}, goes in {daySpan(window.from, window.to)}
					</span>
				</summary>
				{places.map(({ name, address, access, pots }) => (
					<div key={name} className="mt-3">
						<p className="whitespace-pre-line">
							<b>{name}</b>, {address}
						</p>
						{access !== '' && <p className="said mt-2 whitespace-pre-line">{access}</p>}
						{samePots(pots).map(({ names, words, lines }) => (
							<details key={names.join()} className="border-b border-line py-1" open>
								<summary className="min-h-11 cursor-pointer py-2 text-lg font-semibold">
									{names.length > 1 && `${names.length} × `}
									{list(names)}{' '}
									<span className="text-base font-normal text-soft">
										{words}
										{names.length > 1 && '; in each:'}
									</span>
								</summary>
								<Lines lines={lines} />
							</details>
						))}
					</div>
				))}
				{extras.map(({ name, lines }) => (
					<div key={name} className="mt-3">
						<p className="font-semibold">Extra: {name}</p>
						<Lines lines={lines} />
					</div>
				))}
				<p className="mt-4">
					<a className="act" href={`/studio/visits/new/${clientId}?kind=install&season=${season}`}>
						Write down the install<span className="sr-only"> at {client}</span>
					</a>
				</p>
			</details>
		</section>
	)
}

function Lines({ lines }: { readonly lines: Install['extras'][number]['lines'] }) {
	return (
		<ul className="pb-2 text-lg tabular-nums">
			{lines.map(({ name, count, unit, role }) => (
				<li key={`${role} ${name}`} className="flex gap-3">
					<span className="w-28 text-end font-semibold">{quantity(count, unit)}</span>
					<span>{name}</span>
				</li>
			))}
		</ul>
	)
}
