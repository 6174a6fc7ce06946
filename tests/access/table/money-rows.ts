import type { Row } from './rows'

const hidden = {
	designer: 'hidden',
	helper: 'hidden',
	approver: 'hidden',
	payer: 'hidden',
	looker: 'hidden',
	'contact of another client': 'hidden',
	'signed out': 'sign-in',
} as const
const payer = { ...hidden, approver: 'page', payer: 'page', looker: 'forbidden' } as const
const file = { ...hidden, approver: 'file', payer: 'file', looker: 'forbidden', 'signed out': 'hidden' } as const
const designer = { ...hidden, designer: 'page' } as const

/** The pages and files of money, behind both doors. */
export const moneyRows: readonly Row[] = [
	{ route: '/home/[client]/account', method: 'GET', act: 'see the account', of: 'client', says: payer },
	{ route: '/home/[client]/account/csv', method: 'GET', act: 'see the account', of: 'client', says: file },
	{ route: '/home/[client]/account/pdf', method: 'GET', act: 'see the account', of: 'client', says: file },
	{
		...{ route: '/invoice/[number]', method: 'GET', act: 'see the account', of: 'invoice' },
		says: { ...payer, designer: 'page' },
	},
	{
		...{ route: '/invoice/[number]/pdf', method: 'GET', act: 'see the account', of: 'invoice' },
		says: { ...file, designer: 'file' },
	},
	{ route: '/studio/money', method: 'GET', act: 'see accounts', of: 'nothing', says: designer },
	{ route: '/studio/money/[client]', method: 'GET', act: 'see accounts', of: 'client', says: designer },
	{
		...{ route: '/studio/money/[client]/csv', method: 'GET', act: 'see accounts', of: 'client' },
		says: { ...hidden, designer: 'file', 'signed out': 'hidden' },
	},
	{
		...{ route: '/studio/money/[client]/pdf', method: 'GET', act: 'see accounts', of: 'client' },
		says: { ...hidden, designer: 'file', 'signed out': 'hidden' },
	},
	{ route: '/studio/money/invoice/[number]', method: 'GET', act: 'see accounts', of: 'invoice', says: designer },
	{ route: '/studio/season/[season]/result', method: 'GET', act: 'see the costing', of: 'season', says: designer },
]

export const moneyActions = [
	{ name: 'billWhatIsDue', act: 'change accounts' },
	{ name: 'remindWhoIsLate', act: 'change accounts' },
	{ name: 'payIn', act: 'change accounts' },
	{ name: 'payBack', act: 'change accounts' },
	{ name: 'giveUp', act: 'change accounts' },
	{ name: 'creditOne', act: 'change accounts' },
	{ name: 'undo', act: 'change accounts' },
	{ name: 'savePayWords', act: 'change settings' },
] as const
