import type { Entry, Ledger } from '@/lib/money/ledger/entry'

/** An account kept cent by cent, as one would with a box of coins: slow, and by other steps than the core's. */
export type Naive = { readonly open: ReadonlyMap<string, number>; readonly credit: number; readonly balance: number }

const live = (ledger: Ledger): Entry[] => {
	const undone = ledger.flatMap((entry) => (entry.is === 'counter-entry' ? [entry.of] : []))
	return ledger.filter((entry) => entry.is !== 'counter-entry' && !undone.includes(entry.id))
}

type Coin = { readonly to: string | null }

const coins = (amount: number, to: string | null): Coin[] => Array.from({ length: amount }, () => ({ to }))

/** What each invoice wants, oldest first, by day and then by the count in its number. */
function wants(entries: readonly Entry[]): Map<string, number> {
	const invoices = entries.flatMap((entry) => (entry.is === 'invoice' ? [entry] : []))
	const count = (number: string) => Number(number.split('-')[1])
	invoices.sort((a, b) => (a.on === b.on ? count(a.number) - count(b.number) : a.on < b.on ? -1 : 1))
	const open = new Map<string, number>(invoices.map(({ number, cents }) => [number, cents]))
	for (const entry of entries)
		if (entry.is === 'credit note' || entry.is === 'write-off')
			open.set(entry.invoice, (open.get(entry.invoice) ?? 0) - entry.cents)
	return open
}

export function naive(ledger: Ledger): Naive {
	const entries = live(ledger)
	const open = wants(entries)
	let loose = 0
	for (const coin of entries.flatMap((entry) => (entry.is === 'payment' ? coins(entry.cents, entry.invoice) : []))) {
		const wanted = coin.to === null ? 0 : (open.get(coin.to) ?? 0)
		if (coin.to !== null && wanted > 0) open.set(coin.to, wanted - 1)
		else loose += 1
	}
	for (const entry of entries) if (entry.is === 'refund') loose -= entry.cents
	for (; loose > 0; loose -= 1) {
		const first = [...open].find(([, wanted]) => wanted > 0)
		if (first === undefined) break
		open.set(first[0], first[1] - 1)
	}
	const owed = [...open.values()].reduce((all, each) => all + each, 0)
	return { open, credit: loose, balance: owed - loose }
}
