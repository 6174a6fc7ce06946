import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Scene } from '@/lib/picture/scene'
import { describeScene as inWords } from '@/lib/picture/words/describe-scene'
import { hex } from '@/lib/units/hex'
import { palettes } from '../../picture/lines'
import { potOf } from '../../picture/vessels'
import { anyScene } from './any-scene'

const navy = palettes.winter['brass and navy'] ?? []
const left = { ...potOf('round', navy), name: 'left of the door' }
const right = { ...left, name: 'right of the door' }
const scene: Scene = {
	quarter: 'winter',
	hour: 'evening',
	wall: { kind: 'clapboard', hex: hex('#5f7488') },
	door: hex('#7d3a2c'),
	measure: 'none',
	pots: [left, right],
}

describe('a picture in words', () => {
	test('says when, where, what of and how large, and tells twins once', () => {
		const told = inWords(scene)
		expect(told).toMatch(/^Winter, in the evening: two containers before a clapboard wall \(.+\), by a door \(.+\)\./)
		expect(told).toContain('Left of the door and right of the door: round pots of resin, ')
		expect(told).toContain('18 in across and 20 in high')
		expect(told).toContain('Up the middle 13 gold dogwood (')
		expect(told).toContain('warm lights wound through it')
		expect(told).toContain('The tallest rises 28 in above the rim.')
		expect(told.match(/gold dogwood/g)).toHaveLength(1)
	})

	test('is in centimetres where the measure is', () => {
		const told = inWords({ ...scene, measure: 'cm' })
		expect(told).toContain('46 cm across and 51 cm high')
		expect(told).not.toMatch(/\d in\b/)
	})

	test('of an empty pot says that it is empty', () => {
		expect(inWords({ ...scene, pots: [potOf('urn', [])] })).toContain('Nothing is planted yet.')
	})

	test('fixings are not seen, and not told', () => {
		expect(inWords(scene)).not.toContain('stakes')
	})
})

describe('laws of the words', () => {
	const grown = Object.values(palettes).flatMap((all) => Object.values(all).map((lines) => potOf('square', lines)))

	test.each(grown.map((pot) => [pot.lines[0]?.name, pot] as const))(
		'with %s every line is named that is seen',
		(_, pot) => {
			const told = inWords({ ...scene, pots: [pot] })
			const seen = pot.lines.filter(({ role }) => role !== 'mechanics')
			const called = seen.map(({ name, count, form }) => (form === 'lights' ? name : `${count} ${name}`))
			expect(called.filter((words) => !told.includes(words))).toEqual([])
		},
	)

	test('there is never a cost, nor a figure that is no figure', () => {
		fc.assert(
			fc.property(anyScene, (any) => {
				const bare = { ...any, pots: any.pots.map((pot) => ({ ...pot, name: 'pot', lines: pot.lines.map(named) })) }
				expect(inWords(bare)).not.toMatch(/[$€£%]|cost|price|cent|NaN|undefined|null|Infinity/i)
			}),
			{ numRuns: 200 },
		)
	})
})

const named = (line: Scene['pots'][number]['lines'][number]) => ({ ...line, name: 'fir' })
