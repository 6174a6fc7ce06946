import { expect, test } from 'vitest'
import { isSameStreet } from '@/lib/proposal/design/around/same-street'

test.each([
	['27 Tern Lane, Wrenholt', '33 Tern Lane, Wrenholt'],
	['27 Tern Lane, Wrenholt', '33B tern ln., WRENHOLT'],
	['4–6 Chandler’s Row\nSuite 2\nWrenholt', '19 Chandlers Row, Wrenholt'],
	['Marrowby Bakery\n4 Saint Anne Street\nWrenholt', '9 Saint Anne St, Wrenholt'],
	['3 Quay Row', '7 Quay Row'],
])('%j and %j are in one street', (one, other) => {
	expect(isSameStreet(one, other)).toBe(true)
	expect(isSameStreet(other, one)).toBe(true)
})

test.each([
	['another street', '27 Tern Lane, Wrenholt', '27 Kelp Road, Wrenholt'],
	['the same name in another town', '3 Orchard Bend, Wrenholt', '5 Orchard Bend, Nether Wrenholt'],
	['a lane and a street of one name', '27 Tern Lane, Wrenholt', '33 Tern Street, Wrenholt'],
	['no house number', 'Old Customs House, Wrenholt', 'Old Customs House, Wrenholt'],
	['nothing', '', ''],
])('not with %s', (_, one, other) => expect(isSameStreet(one, other)).toBe(false))
