import type { MoneyFormat } from '../../format/money'
import { type Cents, cents } from '../../units/cents'

/** "$120.00 to pay", "$30.00 kept as credit", "Nothing to pay": a balance, as both sides read it. */
export function balanceInWords(balance: Cents, money: MoneyFormat): string {
	if (balance === 0) return 'Nothing to pay'
	return balance > 0 ? `${money(balance)} to pay` : `${money(cents(-balance))} kept as credit`
}
