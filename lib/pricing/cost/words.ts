import { moneyFormat } from '@/lib/format/money'
import type { Words } from './explain'

/** Money as it reads in the currency of the studio. @throws when `currency` is none of the studio's */
export const wordsIn = (currency: string): Words => ({ money: moneyFormat(currency) })
