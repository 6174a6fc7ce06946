import type { Row, Says } from './rows'

const hidden: Says = {
	...{ designer: 'hidden', helper: 'hidden', approver: 'hidden', payer: 'hidden', looker: 'hidden' },
	...{ 'contact of another client': 'hidden', 'signed out': 'hidden' },
}
const signedIn: Says = {
	...{ designer: 'page', helper: 'page', approver: 'page', payer: 'page', looker: 'page' },
	...{ 'contact of another client': 'page', 'signed out': 'sign-in' },
}
const nobody: Says = { ...hidden, 'signed out': 'sign-in' }
const reader: Says = { ...nobody, designer: 'page', approver: 'page', payer: 'page', looker: 'page' }
const led: Says = { ...nobody, designer: 'elsewhere', approver: 'elsewhere', payer: 'elsewhere', looker: 'elsewhere' }
const signer: Says = { ...nobody, designer: 'forbidden', approver: 'page', payer: 'forbidden', looker: 'forbidden' }
const signs: Says = { ...signer, approver: 'elsewhere' }

const row = (method: Row['method'], rest: string, act: Row['act'], says: Says): Row => ({
	...{ method, act, says, of: 'agreement' },
	route: `/agreement/[agreement]${rest}`,
})

/** Behind the client's door: an agreement that waits for a signature and was opened by who may sign, but not agreed to. */
export const agreementRows: readonly Row[] = [
	row('GET', '', 'see the agreement', reader),
	row('GET', '/consent', 'sign the agreement', signer),
	row('GET', '/sign', 'sign the agreement', signs),
	row('GET', '/decline', 'sign the agreement', signer),
	row('GET', '/done', 'see the agreement', led),
	row('GET', '/pdf', 'read its money', {
		...hidden,
		designer: 'file',
		approver: 'file',
		payer: 'file',
		looker: 'forbidden',
	}),
	{ ...row('POST', '/answer/consent', 'sign the agreement', signs), writes: ['approver'] },
	row('POST', '/answer/sign', 'sign the agreement', signs),
	{ route: '/verify', method: 'GET', act: null, of: 'nothing', says: signedIn },
	{ ...row('POST', '/answer/decline', 'sign the agreement', signs), writes: ['approver'] },
]
