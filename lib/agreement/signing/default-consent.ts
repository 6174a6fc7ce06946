import type { Consent } from './consent'

/** Covers what 15 U.S.C. § 7001(c)(1) asks to be said, in our own words; for the studio's own lawyer to read like the clauses. */
export const defaultConsent: Consent = {
	v: 1,
	version: 1,
	points: [
		{
			key: 'scope',
			title: 'What this is about',
			says: 'You agree to have these records from {studio} on a screen instead of on paper: this agreement, whatever changes or ends it, and its invoices, statements and notices. It is about nothing else. For another year’s agreement we ask you again.',
		},
		{
			key: 'paper',
			title: 'Paper instead',
			says: 'You need not agree. You may read and sign on paper and have every record on paper: write to {write to}. Nothing costs more for it, though it takes the days that the post takes.',
		},
		{
			key: 'copies',
			title: 'A paper copy later',
			says: 'After you have agreed, you may still ask for a paper copy of any of these records at {write to}. We charge nothing for it.',
		},
		{
			key: 'withdrawal',
			title: 'Changing your mind',
			says: 'You may withdraw at any time: write to {write to}. It costs nothing and does not end the agreement; what you have signed until then stays signed. From then on we send you the records on paper.',
		},
		{
			key: 'contact',
			title: 'When your address changes',
			says: 'We write to the mail address with which you sign in. When it changes, write to {write to}, from the old address if you can; we put it right, and tell the old one.',
		},
		{
			key: 'equipment',
			title: 'What you need for it',
			says: 'To read: a phone, a tablet or a computer with a connection to the Internet, a mail address, and a browser that is still kept up to date. To keep the records: a program that opens PDF, and room to store a few files or a printer.',
		},
		{
			key: 'change',
			title: 'If that should change',
			says: 'If you will need something else for it, so that you may no longer be able to open or keep the records, we tell you what before, and ask you again. You may then withdraw without a charge and without any consequence that is not told here.',
		},
		{
			key: 'opened',
			title: 'That you can open them',
			says: 'You have opened the agreement on this device just now. By agreeing here, on the same device, you show that you can open and read such records.',
		},
	],
	agrees: 'I agree to have these records on a screen, as told above. I could open and read the agreement.',
	intends:
		'I sign this agreement for {client} by typing my name and pressing “Sign the agreement”. I mean it as I would mean my signature on paper.',
}
