import 'server-only'
import { z } from 'zod'
import type { Letter } from '@/app/documents/mail/letter'
import { type Filled, finish } from '@/app/documents/mail/letters'
import { invoiceLetter, lateLetter, paidLetter } from '@/app/documents/mail/money-letters'
import type { Leased } from '@/db/outbox/lease'
import type { Addressee } from '@/db/outbox/mail-facts'
import { mailedInvoice, mailedLate, mailedPayment } from '@/db/outbox/mailed-money'
import type { Viewer } from '@/lib/access/viewer'
import type { PersonId } from '@/lib/units/id'
import { idSchema } from '@/lib/units/schema'
import { stamp } from '../start/clock'
import { env } from '../start/env'
import { written } from './written'

const about = {
	'invoice sent': z.object({ invoice: z.string() }),
	'payment reminder': z.object({ account: idSchema<'client'>() }),
	'payment received': z.object({ entry: idSchema<'entry'>() }),
} as const
type MoneyMessage = keyof typeof about

export const isAboutMoney = (message: Leased['message']): message is MoneyMessage => message in about

type Mail = { readonly message: MoneyMessage; readonly person: PersonId; readonly facts: unknown }
type Made = { readonly filled: Filled; readonly path: string }

async function made(system: Viewer, { message, person, facts }: Mail): Promise<Made | undefined> {
	switch (message) {
		case 'invoice sent': {
			const found = await mailedInvoice(system, { ...about[message].parse(facts), person })
			return found && { filled: invoiceLetter(found.invoice), path: `/invoice/${found.invoice.number}` }
		}
		case 'payment reminder': {
			const found = await mailedLate(system, { ...about[message].parse(facts), person }, stamp())
			if (found === undefined || found.late.length === 0) return undefined
			return { filled: lateLetter(found), path: `/home/${found.client}/account` }
		}
		case 'payment received': {
			const found = await mailedPayment(system, { ...about[message].parse(facts), person })
			return found && { filled: paidLetter(found), path: `/home/${found.client}/account` }
		}
		default:
			return message satisfies never
	}
}

/** What a mail about money says; undefined when there is nothing left to say: it was paid by now, or its client is gone. */
export async function composeMoney(system: Viewer, mail: Mail, to: Addressee): Promise<Letter | undefined> {
	const found = await made(system, mail)
	return found && finish(found.filled, to, `${env().siteUrl}${found.path}?for=${to.handle}`, written.client(to.studio))
}
