import { describe, expect, test } from 'vitest'
import { blanks, blanksIn } from '@/lib/agreement/template/blanks'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { faults } from '@/lib/agreement/template/faults'
import { lawyerLine, templateSchema } from '@/lib/agreement/template/template'

const textOf = (key: string) => defaultTemplate.clauses.find((clause) => clause.key === key)?.text ?? ''

test('is sound and can be stored', () => {
	expect(faults(defaultTemplate)).toEqual([])
	expect(templateSchema.parse(defaultTemplate)).toEqual(defaultTemplate)
})

test('uses each blank, so that nothing that was agreed is left unsaid', () => {
	const used = defaultTemplate.clauses.flatMap(({ text }) => blanksIn(text).known)
	expect([...new Set(used)].toSorted()).toEqual([...blanks].toSorted())
})

// What an agreement of the trade settles: common practice, no published source.
describe('says', () => {
	test.each([
		['who agrees', 'parties', /\{studio\}.*\{client\}/],
		['a start in any season', 'term', /\{start\}.*\{end\}.*may begin in any season/],
		['places and containers', 'containers', /\{places\}[\s\S]*\{containers\}/],
		['who judges what a roof carries', 'containers', /licensed engineer/],
		['the visits included', 'visits', /\{visits\}/],
		['the price of each season', 'price', /\{prices\}[\s\S]*quoted season is priced in a proposal/],
		['the instalments', 'instalments', /\{instalments\}/],
		['that nothing is billed twice', 'instalments', /never with these instalments/],
		['who waters', 'watering', /watered by \{waters\}/],
		['what is sold and what is lent', 'belonging', /\{sold\}.*\{lent\}/],
		['who replaces what', 'replacement', /we replace without a charge.*at its price/],
		['what may stand in', 'substitution', /same colour and habit without asking.*new answer/],
		['weather and theft', 'weather', /Storm.*theft/],
		['access and outlets', 'access', /reach the containers.*outdoor outlet with a ground-fault interrupter/],
		['what pictures are for', 'photographs', /not at all when you ask us not to/],
		['when the lights come down', 'lights', /taken down by \{lights down\}/],
		['how it ends', 'ending', /\{notice\} of notice.*until the day on which it ends remain due.*paid back/],
		['how it changes', 'changes', /new one alone.*Until then this one holds/],
		['the law, left to fill', 'law', /law of \{law\}/],
	])('%s', (_, key, says) => {
		expect(textOf(key)).toMatch(says)
	})
})

test('the studio is told that this is no legal advice, and the client’s text says nothing of it', () => {
	expect(lawyerLine).toMatch(/no legal advice.*your own lawyer/)
	expect(defaultTemplate.clauses.map(({ text }) => text).join('\n')).not.toMatch(/legal advice/)
})
