import { v7 } from 'uuid'
import type { Things } from '../site/things'
import type { Fields } from './forms'

const head = ({ document }: Things): Fields => [
	['once', v7()],
	['document', document],
]

/** Forms of an agreement's pages, filled in so that they would go through. */
export const agreementForms = {
	consent: (things: Things): Fields => [...head(things), ['words', things.words], ['agrees', 'on']],
	sign: (things: Things): Fields => [...head(things), ['name', 'Maud Marrowby'], ['stroke', '12.34-13.40_500.20']],
	decline: (things: Things): Fields => [...head(things), ['reason', 'We are closing the shop.']],
} as const

export const isAgreementForm = (name: string): name is keyof typeof agreementForms => name in agreementForms
