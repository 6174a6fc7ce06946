/** What each field of the forms of money is for. */
export const moneyForms = {
	billWhatIsDue: { fields: { client: 'id' }, empty: ['client'], hidden: ['client'] },
	remindWhoIsLate: { fields: { client: 'id', again: 'tick' }, empty: ['client'], hidden: ['client', 'again'] },
	payIn: {
		fields: {
			client: 'id',
			on: 'day',
			amount: 'money',
			means: 'choice',
			reference: 'words',
			invoice: 'choice',
			keepRest: 'tick',
		},
		empty: ['invoice'],
		hidden: ['client'],
	},
	payBack: {
		fields: { client: 'id', on: 'day', amount: 'money', means: 'choice', reference: 'words' },
		hidden: ['client'],
	},
	giveUp: { fields: { client: 'id', invoice: 'choice', amount: 'money', reason: 'words' }, hidden: ['client'] },
	creditOne: { fields: { client: 'id', invoice: 'choice', amount: 'money', reason: 'words' }, hidden: ['client'] },
	undo: { fields: { client: 'id', entry: 'id', reason: 'words' }, hidden: ['client', 'entry'] },
	savePayWords: { fields: { payWords: 'lines' }, hidden: [] },
} as const
