import { describe, expect, test } from 'vitest'
import { problems } from '@/lib/agreement/document/ready'
import { placeOf } from '@/lib/agreement/studio/box-of'
import { agreementGroup } from '@/lib/agreement/studio/group'
import { isLately } from '@/lib/agreement/studio/lately'
import { startingTerms } from '@/lib/agreement/studio/starting'
import { defaultTemplate } from '@/lib/agreement/template/default-template'
import { hash } from '@/lib/record/hash'
import { seasonName } from '@/lib/season/season'
import { day, moment } from '@/lib/units/day'
import { containerId, facts, terms } from '../sample'

describe('what a new agreement begins with', () => {
	test.each([
		['2026-10-06', '2026-11-01', '2027-10-31', 'autumn 2026, winter 2026–27, spring 2027, summer 2027'],
		['2026-12-31', '2027-01-01', '2027-12-31', 'winter 2026–27, spring 2027, summer 2027, autumn 2027'],
		['2027-02-01', '2027-03-01', '2028-02-29', 'spring 2027, summer 2027, autumn 2027, winter 2027–28'],
	])('on %s', (today, from, to, seasons) => {
		const begun = startingTerms(day(today), [containerId(1)])
		expect([begun.from, begun.to, begun.seasons.map(seasonName).join(', ')]).toEqual([from, to, seasons])
		expect(begun.seasons.every(({ price, containers }) => price.is === 'quoted' && containers.length === 1)).toBe(true)
	})
})

describe('each thing that is missing leads to its box', () => {
	const [winter, ...rest] = terms.seasons
	const broken = {
		...terms,
		from: null,
		plan: null,
		seasons: winter === undefined ? [] : [...rest, { ...winter, containers: [] }],
		said: { ...terms.said, law: '', waters: null, lightsDownBy: null },
	}
	test('to the season where it stands, and to the blank that is open', () => {
		const places = problems(broken, facts, defaultTemplate).map((problem) => placeOf(problem, broken))
		expect([...new Set(places)].toSorted()).toEqual(
			['#from', '#law', '#lightsDownBy', '#plan', '#season.2.container', '#waters'].toSorted(),
		)
	})

	test('and a clause at fault to the template', () => {
		expect(placeOf({ at: 'clauses.term.text', says: '' }, terms)).toBe('/studio/agreements/template#clause-term')
	})
})

test('whose move it is', () => {
	const issued = hash('a'.repeat(64))
	expect(agreementGroup({ is: 'drafting' })).toBe('waiting for us')
	expect(agreementGroup({ is: 'to be signed', issued, inForce: null })).toBe('waiting for them')
	expect(agreementGroup({ is: 'declined', issued, inForce: null })).toBe('waiting for us')
	expect(agreementGroup({ is: 'signed', issued, inForce: issued })).toBe('settled')
	expect(agreementGroup({ is: 'ended', issued, inForce: null })).toBe('settled')
})

test('reminded within two days is lately, after two days it is not', () => {
	const at = (text: string) => moment(new Date(text))
	expect(isLately(null, at('2026-10-06T12:00:00Z'))).toBe(false)
	expect(isLately(at('2026-10-04T12:00:01Z'), at('2026-10-06T12:00:00Z'))).toBe(true)
	expect(isLately(at('2026-10-04T12:00:00Z'), at('2026-10-06T12:00:00Z'))).toBe(false)
})
