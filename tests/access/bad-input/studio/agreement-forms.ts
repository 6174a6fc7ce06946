/** What each field of the forms of agreements is for; those of clauses, endings and papers: `../agreements/studio.test.ts`. */
export const agreementForms = {
	beginAgreement: { fields: { client: 'id' }, hidden: ['client'] },
	remindSigner: {
		fields: { agreement: 'id', year: 'number', again: 'choice' },
		// From the agreement's own page no year is sent.
		empty: ['year'],
		hidden: ['agreement', 'year', 'again'],
	},
	remindSigners: { fields: { year: 'number', again: 'tick' }, hidden: ['year', 'again'] },
	issue: { fields: { agreement: 'id', version: 'number', signBy: 'day' }, hidden: ['agreement', 'version'] },
	takeBack: { fields: { agreement: 'id' }, hidden: ['agreement'] },
	saveTerms: {
		fields: {
			agreement: 'id',
			version: 'number',
			from: 'day',
			to: 'day',
			'season.0.quarter': 'choice',
			'season.0.year': 'number',
			'season.0.is': 'choice',
			'season.0.price': 'money',
			'season.0.container': 'choice',
			'season.0.install': 'number',
			plan: 'choice',
			planCount: 'number',
			planStart: 'choice',
			planDay: 'day',
			waters: 'choice',
			sold: 'words',
			lent: 'words',
			lightsDownBy: 'day',
			noticeDays: 'number',
			law: 'words',
		},
		empty: ['season.0.quarter', 'season.0.install', 'noticeDays', 'law'],
		hidden: ['agreement', 'version'],
	},
} as const
