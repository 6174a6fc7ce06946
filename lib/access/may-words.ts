import type { May } from './viewer'

/** After "may". */
export const mayInWords: Readonly<Record<May, string>> = {
	approve: 'approve and sign',
	pay: 'look, and see what is owed and paid',
	look: 'look only',
}
