import { createHash, randomBytes } from 'node:crypto'
import { doors, type PersonKey } from '@/demo/cast/people'
import type { Seeded } from '@/demo/seed'
import type { Person } from '@/lib/access/viewer'
import type { Sending } from '../ask/send'
import { record } from './snapshot'

/** Everybody who asks: staff, contacts, and five who come with nothing that still opens a door. */
export const persons = [
	'designer',
	'helper',
	'approver',
	'looker',
	'payer',
	'other approver',
	'two doors',
	'signed out',
	'token holder',
	'expired',
	'idle',
	'ended',
] as const
export type PersonName = (typeof persons)[number]

/** What a person may be to a thing, as the table of rights has it; for a token there is no door at all yet. */
export type Column = Exclude<Person, 'token holder' | 'system'>
export type ClientKey = keyof Seeded['clients']

/** Who of the cast the contacts are. */
export const contacts = {
	approver: 'bakeryApprover',
	looker: 'bakeryViewer',
	payer: 'dentalViewer',
	'other approver': 'dentalApprover',
	'two doors': 'twoDoors',
} as const satisfies Partial<Record<PersonName, PersonKey>>

const isContact = (person: PersonName): person is keyof typeof contacts => Object.hasOwn(contacts, person)

/** Who somebody of the cast is to a thing of `client`; null for a thing of the whole studio. */
export function columnOf(person: PersonName, client: ClientKey | null): Column {
	if (person === 'designer' || person === 'helper') return person
	if (!isContact(person)) return 'signed out'
	const door = doors.find(([of, who]) => of === client && who === contacts[person])
	if (door === undefined) return 'contact of another client'
	if (door[2] === 'approve') return 'approver'
	return person === 'payer' ? 'payer' : 'looker'
}

const day = 86_400_000

type Session = { readonly expiresIn?: number; readonly age?: number }

/** Writes a session into the site's record. @returns what its cookie holds */
export function openSession(folder: string, person: string, { expiresIn = 7 * day, age = 0 }: Session = {}): string {
	const token = randomBytes(32).toString('base64url')
	const hash = createHash('sha256').update(token).digest('hex')
	const row = [hash, person, Date.now() + expiresIn, new Date(Date.now() - age).toISOString()]
	record(folder, (db) =>
		db.prepare('INSERT INTO session (session_token, user_id, expires, created_at) VALUES (?, ?, ?, ?)').run(...row),
	)
	return token
}

export type Credentials = Pick<Sending, 'session' | 'headers'> & { readonly query?: string }

/** What each of them sends along. Closes the door to one contact behind the site's back, leaving the session's row. */
export function everybody(folder: string, cast: Seeded): Record<PersonName, Credentials> {
	const as = (key: keyof Seeded['people'], session?: Session) => ({
		session: openSession(folder, cast.people[key].id, session),
	})
	const { id } = cast.people.bakerySecondApprover
	record(folder, (db) =>
		db.prepare('UPDATE contact SET ended_at = ? WHERE person_id = ?').run(new Date().toISOString(), id),
	)
	record(folder, (db) =>
		db.prepare('UPDATE contact SET sees_money = 1 WHERE person_id = ?').run(cast.people[contacts.payer].id),
	)
	const token = randomBytes(32).toString('base64url')
	return {
		designer: as('designer'),
		helper: as('helper'),
		approver: as(contacts.approver),
		looker: as(contacts.looker),
		payer: as(contacts.payer),
		'other approver': as(contacts['other approver']),
		'two doors': as(contacts['two doors']),
		'signed out': {},
		'token holder': { session: token, headers: { authorization: `Bearer ${token}` }, query: `token=${token}` },
		expired: as(contacts.approver, { expiresIn: -1000, age: 30 * day }),
		idle: as(contacts.approver, { age: 15 * day }),
		ended: as('bakerySecondApprover'),
	}
}
