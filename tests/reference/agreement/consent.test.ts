import { describe, expect, test } from 'vitest'
import { consentFor } from '@/lib/agreement/signing/consent'
import { defaultConsent } from '@/lib/agreement/signing/default-consent'

// 15 U.S.C. § 7001(c)(1) (Electronic Signatures in Global and National Commerce Act, section 101(c)(1)): what a consumer
// has to be told before agreeing to electronic records. Whether our words do it well is for a lawyer; that each point is
// said is checked here.
const shown = consentFor(defaultConsent, {
	...{ studio: 'Thornapple Studio', writeTo: 'ada@thornapple.example', client: 'Marrowby Bakery' },
})
const says = (key: string) => shown.points.find((point) => point.key === key)?.says ?? ''

describe('15 U.S.C. § 7001(c)(1)', () => {
	test.each([
		[
			'(B)(i)(I)',
			'a right to have the record on paper',
			'paper',
			/may read and sign on paper and have every record on paper/,
		],
		['(B)(i)(II)', 'the right to withdraw', 'withdrawal', /may withdraw at any time/],
		['(B)(i)(II)', 'its fees', 'withdrawal', /costs nothing/],
		['(B)(i)(II)', 'its consequences', 'withdrawal', /does not end the agreement.*From then on.*on paper/],
		['(B)(ii)', 'for which records the consent is', 'scope', /this agreement, .*invoices, statements and notices/],
		['(B)(ii)', 'and for which not', 'scope', /about nothing else.*we ask you again/],
		['(B)(iii)', 'how to withdraw', 'withdrawal', /write to ada@thornapple\.example/],
		['(B)(iii)', 'how to change the address', 'contact', /When it changes, write to ada@thornapple\.example/],
		['(B)(iv)(I)', 'how to get a paper copy later', 'copies', /ask for a paper copy .* at ada@thornapple\.example/],
		['(B)(iv)(II)', 'what that costs', 'copies', /charge nothing/],
		['(C)(i)', 'hardware and software to open the records', 'equipment', /To read: a phone.*connection.*browser/],
		['(C)(i)', 'and to keep them', 'equipment', /To keep the records: .*PDF.*store.*printer/],
		[
			'(C)(ii)',
			'that agreeing shows that they can be opened',
			'opened',
			/on the same device, you show that you can open/,
		],
		['(D)(i)', 'what follows when the needs change', 'change', /we tell you what before, and ask you again/],
		[
			'(D)(i)(II)',
			'withdrawing then, without fee or new consequence',
			'change',
			/withdraw without a charge and without any/,
		],
	])('%s %s', (_point, _what, key, words) => {
		expect(says(key)).toMatch(words)
	})

	test('(C)(ii) the person says so, in the sentence that they agree to', () => {
		expect(shown.agrees).toMatch(/^I agree to have these records on a screen.*I could open and read the agreement\.$/)
	})
})
