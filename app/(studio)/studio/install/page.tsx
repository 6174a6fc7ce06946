import type { Metadata } from 'next'
import { studioPage } from '@/app/server/studio/studio-page'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { type Install, toInstall } from '@/db/proposals/to-install'
import { daySpan } from '@/lib/format/day'
import { quantity } from '@/lib/format/words'

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
			{installs.map((install) => (
				<One key={install.proposal} install={install} />
			))}
		</StudioFrame>
	)
}

function One({ install: { client, window, palette, places, extras } }: { readonly install: Install }) {
	return (
		<section className="mt-8 max-w-3xl border-t-2 border-ink pt-2" aria-label={client}>
			<h2 className="text-2xl">{client}</h2>
			<p className="text-soft">
				{palette}, goes in {daySpan(window.from, window.to)}
			</p>
			{places.map(({ name, address, access, pots }) => (
				<div key={name} className="mt-3">
					<p className="whitespace-pre-line">
						<b>{name}</b>, {address}
					</p>
					{access !== '' && <p className="said mt-2 whitespace-pre-line">{access}</p>}
					{pots.map((pot) => (
						<details key={pot.name} className="border-b border-line py-1" open>
							<summary className="min-h-11 cursor-pointer py-2 text-lg font-semibold">
								{pot.name} <span className="text-base font-normal text-soft">{pot.words}</span>
							</summary>
							<Lines lines={pot.lines} />
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
