import { beginAgreement, saveTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { beginAgreementFor } from '@/db/agreements/studio/begin-for'
import { endAgreement, endingOutlook, takeBackAgreement } from '@/db/agreements/studio/end'
import { agreementsToSign, listAgreements } from '@/db/agreements/studio/list'
import { clientAgreements } from '@/db/agreements/studio/of-client'
import { readScan, recordPaper } from '@/db/agreements/studio/paper'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { remindSigner, remindSigners } from '@/db/agreements/studio/remind'
import { agreementNames, endingIn, renewAgreement } from '@/db/agreements/studio/renew'
import { readTemplate, saveTemplate } from '@/db/agreements/template'
import { remindSignersDue } from '@/db/house/remind-signers-due'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { emptyTerms } from '@/lib/agreement/terms'
import { day, moment } from '@/lib/units/day'
import { designerAndSystemRead, designerDoes, designerReads, type Row, row, systemReads } from './outcomes'

const renamed = defaultTemplate.clauses.map((clause, index) => (index === 0 ? { ...clause, title: 'Us two' } : clause))

const ending = { on: day('2028-05-31'), saidOn: day('2026-10-06'), by: 'client', reason: 'They move away.' } as const
const renewal = { rise: { is: 'percent', percent: 4 }, stepCents: 500, adjusted: [] } as const
const scan = Buffer.from('a picture')

/** What the studio does with agreements. */
export const agreementRows: Readonly<Record<string, Row>> = {
	'agreements/draft beginAgreement': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) => beginAgreement(viewer, { client }, stamp())),
	'agreements/draft saveTerms': row(
		'client',
		designerDoes,
	)((viewer, { agreement }, { stamp }) => saveTerms(viewer, { agreement, version: 1, terms: emptyTerms }, stamp())),
	'agreements/issue issueAgreement': row(
		'client',
		designerDoes,
	)((viewer, { unissued: agreement }, { stamp, once }) =>
		issueAgreement(viewer, { agreement, version: 1, signBy: day('2026-10-30'), once: once() }, stamp()),
	),
	'agreements/template readTemplate': row('studio', designerReads)((viewer) => readTemplate(viewer)),
	'agreements/template saveTemplate': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => saveTemplate(viewer, { version: 1, clauses: renamed }, stamp())),
	'agreements/studio/begin-for beginAgreementFor': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) => beginAgreementFor(viewer, client, stamp())),
	'agreements/studio/end endAgreement': row(
		'client',
		designerDoes,
	)((viewer, { held: agreement }, { stamp, once }) =>
		endAgreement(viewer, { agreement, ending, once: once() }, stamp()),
	),
	'agreements/studio/end endingOutlook': row(
		'client',
		designerReads,
	)((viewer, { held }, { stamp }) => endingOutlook(viewer, held, ending, stamp())),
	'agreements/studio/end takeBackAgreement': row(
		'client',
		designerDoes,
	)((viewer, { agreement }, { stamp, once }) => takeBackAgreement(viewer, { agreement, once: once() }, stamp())),
	'agreements/studio/list agreementsToSign': row(
		'studio',
		designerAndSystemRead,
	)((viewer, _, { stamp }) => agreementsToSign(viewer, stamp())),
	'agreements/studio/list listAgreements': row(
		'studio',
		designerAndSystemRead,
	)((viewer, _, { stamp }) => listAgreements(viewer, undefined, stamp())),
	'agreements/studio/of-client clientAgreements': row(
		'client',
		designerAndSystemRead,
	)((viewer, { client }, { stamp }) => clientAgreements(viewer, client, stamp())),
	'agreements/studio/paper readScan': row(
		'client',
		designerAndSystemRead,
	)((viewer, { held: agreement, heldDocument: document }, { stamp }) =>
		readScan(viewer, { agreement, document }, stamp()),
	),
	'agreements/studio/paper recordPaper': row(
		'client',
		designerDoes,
	)((viewer, { agreement, document }, { stamp, once }) =>
		recordPaper(
			viewer,
			{ agreement, document, signer: 'Maud Marrowby', signedOn: day('2026-10-06'), scan, once: once() },
			stamp(),
		),
	),
	'agreements/studio/read-desk agreementDesk': row(
		'client',
		designerReads,
	)((viewer, { agreement }, { stamp }) => agreementDesk(viewer, agreement, stamp())),
	'agreements/studio/remind remindSigner': row(
		'client',
		designerDoes,
	)((viewer, { agreement }, { stamp, once }) =>
		remindSigner(viewer, { agreement, again: true, once: once() }, stamp()),
	),
	'agreements/studio/remind remindSigners': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp, once }) => remindSigners(viewer, { again: true, once: once() }, stamp())),
	'agreements/studio/renew agreementNames': row('studio', designerReads)((viewer) => agreementNames(viewer)),
	'agreements/studio/renew endingIn': row(
		'studio',
		designerReads,
	)((viewer, _, { stamp }) => endingIn(viewer, 2028, () => renewal, stamp())),
	'agreements/studio/renew renewAgreement': row(
		'client',
		designerDoes,
	)((viewer, { held: agreement }, { stamp, once }) =>
		renewAgreement(viewer, { agreement, renewal, signBy: day('2026-10-30'), once: once() }, stamp()),
	),
	'house/remind-signers-due remindSignersDue': row(
		'studio',
		systemReads,
	)((viewer, _, { stamp }) => remindSignersDue(viewer, stamp(moment(new Date('2026-10-27T16:00:00Z'))))),
}
