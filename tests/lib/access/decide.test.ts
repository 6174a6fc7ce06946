import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decide, verdict } from '@/lib/access/decide'
import { type Act, table } from '@/lib/access/table'
import { type May, mays, type Person, people, personTo, type Who } from '@/lib/access/viewer'
import { type ClientId, id } from '@/lib/units/id'

const client = (n: number): ClientId => id<'client'>(`00000000-0000-7000-8000-00000000d${String(n).padStart(3, '0')}`)
const person = id<'person'>('00000000-0000-7000-8000-00000000e001')
const [ninefold, quay, mill] = [client(1), client(2), client(3)]

const contact = (...clients: [ClientId, May][]): Who => ({ is: 'contact', person, clients: new Map(clients) })
const designer: Who = { is: 'staff', person, role: 'designer' }
const helper: Who = { is: 'staff', person, role: 'helper' }
const both = contact([ninefold, 'approve'], [quay, 'look'])

const acts = Object.keys(table).filter((act): act is Act => Object.hasOwn(table, act))

describe('what someone is to a thing', () => {
	test.each<{ name: string; who: Who; of: ClientId | null; is: Person }>([
		{ name: 'the designer, to any client’s', who: designer, of: quay, is: 'designer' },
		{ name: 'the designer, to the studio’s', who: designer, of: null, is: 'designer' },
		{ name: 'a helper', who: helper, of: ninefold, is: 'helper' },
		{ name: 'who may approve, to their own', who: both, of: ninefold, is: 'approver' },
		{ name: 'the same person, where they may look', who: both, of: quay, is: 'looker' },
		{ name: 'who looks at money too', who: contact([quay, 'pay']), of: quay, is: 'payer' },
		{ name: 'the same person, at a third client', who: both, of: mill, is: 'contact of another client' },
		{ name: 'a contact, to a thing of the studio', who: both, of: null, is: 'contact of another client' },
		{ name: 'a contact whose last client ended', who: contact(), of: ninefold, is: 'contact of another client' },
		{ name: 'the holder of a calendar', who: { is: 'token', of: 'calendar' }, of: ninefold, is: 'token holder' },
		{ name: 'the holder of a picture', who: { is: 'token', of: 'picture' }, of: null, is: 'token holder' },
		{ name: 'nobody', who: { is: 'nobody' }, of: ninefold, is: 'signed out' },
		{ name: 'the machinery', who: { is: 'system' }, of: mill, is: 'system' },
	])('$name: $is', ({ who, of, is }) => {
		expect(personTo(who, of)).toBe(is)
	})
})

const ids = fc.integer({ min: 1, max: 5 }).map(client)
const whos: fc.Arbitrary<Who> = fc.oneof(
	fc.constantFrom<Who>(designer, helper, { is: 'nobody' }, { is: 'system' }),
	fc.constantFrom<Who>({ is: 'token', of: 'calendar' }, { is: 'token', of: 'picture' }),
	fc.array(fc.tuple(ids, fc.constantFrom<May>(...mays)), { maxLength: 4 }).map((clients) => contact(...clients)),
)
const things = fc.option(ids)

describe('laws of access', () => {
	test('there is a verdict for everyone, every act and every thing, and it is the table’s', () => {
		fc.assert(
			fc.property(whos, fc.constantFrom(...acts), things, (who, act, of) => {
				const is = decide(who, act, of)
				expect(['may', 'forbidden', 'hidden']).toContain(is)
				expect(people).toContain(personTo(who, of))
				expect(is).toBe(verdict(personTo(who, of), act))
			}),
			{ numRuns: 1000 },
		)
	})

	test('to a contact, another client’s thing is as one that does not exist: what nobody gets, for every act', () => {
		fc.assert(
			fc.property(whos, ids, (who, of) => {
				fc.pre(who.is === 'contact' && !who.clients.has(of))
				for (const act of acts) expect(decide(who, act, of)).toBe(decide({ is: 'nobody' }, act, of))
			}),
		)
	})

	test('what a contact may at one client gives nothing at another', () => {
		fc.assert(
			fc.property(ids, ids, fc.constantFrom<May>(...mays), (own, other, may) => {
				fc.pre(own !== other)
				for (const act of acts) expect(decide(contact([own, may]), act, other)).toBe(decide(contact(), act, other))
			}),
		)
	})

	test('a right taken away is gone at once', () => {
		const before = contact([ninefold, 'approve'])
		expect(decide(before, 'answer the proposal', ninefold)).toBe('may')
		expect(decide(contact([ninefold, 'look']), 'answer the proposal', ninefold)).toBe('forbidden')
		expect(decide(contact(), 'answer the proposal', ninefold)).toBe('hidden')
	})
})
