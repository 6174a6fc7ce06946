import { describe, expect, test } from 'vitest'
import { verify } from '@/db/record/verify'
import { isSetUpLink, offerSetUp, setUpStudio } from '@/db/start/set-up'
import { start } from '@/db/start/start'
import { readSettings } from '@/db/studio/studio'
import { viewerOf } from '@/db/viewer'
import { stampsFrom } from '@/demo/stamps'
import { sha256 } from '@/lib/record/hash'
import { changesOf, refused, rowsIn } from '../stage/rows'
import { emptyStudio, found, stranger, studio, utc } from '../stage/studio'

const link = (words: string) => sha256(`set-up ${words}`)
const made = {
	name: 'Fern & Ferrule',
	timeZone: 'Europe/Lisbon',
	currency: 'EUR',
	lengths: 'cm',
	designer: 'Aurea Tidewell',
	address: 'aurea@fernandferrule.example',
} as const

describe('an empty studio', () => {
	const { folder } = emptyStudio()
	const stamp = stampsFrom('a set-up')(utc('2026-10-06T09:15'))

	test('becomes somebody’s by its link, once', async () => {
		start(folder())
		expect(await offerSetUp(link('first'), stamp)).toBe(true)
		const { said, did } = await changesOf(folder(), () => setUpStudio(link('first'), made, stamp))
		expect(did).toEqual({ studio: '+1', person: '+1', staff: '+1', rates: '+1', event: '+2', set_up: '-1' })
		const designer = await viewerOf(found(said))
		expect(designer).toMatchObject({ is: 'staff', role: 'designer' })
		const { designer: _, address: __, ...settings } = made
		expect(await readSettings(designer)).toEqual(settings)
		expect(await verify(designer)).toMatchObject({ lines: 2, broken: null })
		expect(await refused(folder(), () => setUpStudio(link('first'), made, stamp))).toBeUndefined()
	})

	test('knows its link and no other, and forgets the one before', async () => {
		start(folder())
		await offerSetUp(link('lost'), stamp)
		expect(await isSetUpLink(link('lost'))).toBe(true)
		await offerSetUp(link('newer'), stamp)
		expect(await Promise.all(['lost', 'newer', 'guessed'].map((words) => isSetUpLink(link(words))))).toEqual([
			false,
			true,
			false,
		])
		for (const words of ['lost', 'guessed'])
			expect(await refused(folder(), () => setUpStudio(link(words), made, stamp))).toBeUndefined()
		expect(rowsIn(folder()).set_up).toHaveLength(1)
	})
})

describe('a studio that has staff', () => {
	const of = studio()

	test('is offered to nobody', async () => {
		expect(await refused(of.folder(), () => offerSetUp(link('late'), of.stamp()))).toBe(false)
		expect(await isSetUpLink(link('late'))).toBe(false)
	})

	test('cannot be taken over by a link that was left lying', async () => {
		stranger(of.folder(), (sqlite) =>
			sqlite.prepare('INSERT INTO set_up VALUES (1, ?, ?)').run(link('left'), of.stamp().at),
		)
		await refused(of.folder(), () =>
			setUpStudio(link('left'), made, of.stamp()).then(
				(taken) => expect(taken).toBeUndefined(),
				(error: unknown) => expect(error).toBeInstanceOf(Error),
			),
		)
	})
})
