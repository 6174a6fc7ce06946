import type { Act } from '@/lib/access/table'
import type { Row, Says } from './rows'

const nobody: Says = {
	...{ designer: 'hidden', helper: 'hidden', approver: 'hidden', payer: 'hidden', looker: 'hidden' },
	...{ 'contact of another client': 'hidden', 'signed out': 'sign-in' },
}
const designer: Says = { ...nobody, designer: 'page' }
const led: Says = { ...nobody, designer: 'elsewhere' }
const hiddenFromAll: Says = { ...nobody, 'signed out': 'hidden' }
const act: Act = 'change agreements'

const row = (method: Row['method'], rest: string, of: Row['of'], says: Says): Row => ({
	...{ method, act, says, of },
	route: `/studio/agreements${rest}`,
})

/** Agreements behind the studio's door. */
export const studioAgreementRows: readonly Row[] = [
	row('GET', '', 'nothing', designer),
	row('GET', '/template', 'nothing', designer),
	row('GET', '/renew', 'nothing', designer),
	// Nothing that was signed is renewed here: what is asked is looked at, and nothing comes of it.
	row('POST', '/renew/send', 'nothing', led),
	row('GET', '/[agreement]', 'agreement', designer),
	// Without a picture of the paper nothing is kept.
	row('POST', '/[agreement]/paper', 'agreement', led),
	// Of what nobody signed on paper there is no picture.
	{
		...row('GET', '/[agreement]/scan/[document]', 'agreement', hiddenFromAll),
		path: `/studio/agreements/01999999-0000-7000-8000-00000000000a/scan/${'f'.repeat(64)}`,
		of: 'nothing',
	},
]

/** Its server actions. */
export const studioAgreementActions = [
	'beginAgreement',
	'remindSigner',
	'remindSigners',
	'saveTemplate',
	'saveTerms',
	'issue',
	'takeBack',
	'endAgreement',
].map((name) => ({ name, act }))
