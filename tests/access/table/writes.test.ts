import { v7 } from 'uuid'
import { describe, expect, it } from 'vitest'
import { dayOf, moment } from '@/lib/units/day'
import { bodyFor, formOf, pageWith, scanned } from '../ask/bodies'
import { actionNamed } from '../ask/build'
import { pathOf } from '../ask/cells'
import { called, type Fields, over, posted, urlencoded } from '../ask/forms'
import { outcomeOf, outcomeOfCall } from '../ask/outcome'
import { send } from '../ask/send'
import { tally } from '../ask/tally'
import { open } from '../site/here'
import { contacts, openSession, type PersonName, persons } from '../site/people'
import { record, snapshot, snapshotAtRest } from '../site/snapshot'
import { draftOf, type Things, thingsOf } from '../site/things'
import { actionRows, rows } from './rows'

/** What the table of rights lets somebody change is changed, on a copy of the studio of its own: else the refusals would show nothing. */
const tried = tally((cells) => `allowed writes: ${cells} tried`)

async function changes(act: () => Promise<void>): Promise<string[]> {
	const before = await snapshotAtRest(open.site.folder)
	await act()
	tried()
	const after = snapshot(open.site.folder)
	return Object.keys(after).filter((table) => after[table] !== before[table])
}

const rowOf = (route: string) => {
	const found = rows.find((row) => row.route === route && row.method === 'POST')
	if (found === undefined) throw new Error(`There is no row for a POST to ${route}.`)
	return found
}

describe('a contact answers their own proposal', () => {
	it.each([
		['approve', 'approver', 'bakery'],
		['change', 'other approver', 'dental'],
		['skip', 'two doors', 'vet'],
	] as const)('%s, by the %s of %s', async (answer, person, client) => {
		const things = thingsOf(open.site.folder, open.site.cast, client)
		const row = rowOf(`/proposal/[proposal]/answer/${answer}`)
		const changed = await changes(async () => {
			const path = pathOf(row, things.proposal, things)
			const said = await open.ask(person, path, { method: 'POST', ...bodyFor(row, things, null) })
			expect([outcomeOf(said), said.headers.location]).toEqual(['elsewhere', `/proposal/${things.proposal}/done`])
		})
		expect(changed).toEqual(expect.arrayContaining(['answer', 'event', 'once', 'outbox', 'proposal', 'sealed_text']))
	})

	it('and a second answer to the same is not taken', async () => {
		const things = thingsOf(open.site.folder, open.site.cast, 'bakery')
		const row = rowOf('/proposal/[proposal]/answer/skip')
		const changed = await changes(async () => {
			const said = await open.ask('approver', pathOf(row, things.proposal, things), {
				method: 'POST',
				...bodyFor(row, things, null),
			})
			expect(said.headers.location).toContain('told=already+approved')
		})
		expect(changed).toEqual([])
	})
})

describe('visits', () => {
	it.each([
		['an approver says that something is wrong', 'approver', 'bakery', '/home/[client]/wrong/send', 'client'],
		['one who may only look says so too', 'looker', 'bakery', '/home/[client]/wrong/send', 'client'],
		['the helper writes a visit down', 'helper', 'bakery', '/studio/visits/[visit]/keep', 'visit'],
		['the helper begins one', 'helper', 'bakery', '/studio/visits/new/[client]/keep', 'client'],
		['the designer puts one right', 'designer', 'inn', '/studio/visits/[visit]/keep', 'visit'],
		['the designer begins one', 'designer', 'dental', '/studio/visits/new/[client]/keep', 'client'],
	] as const)('%s', async (_, person, client, route, thing) => {
		const things = thingsOf(open.site.folder, open.site.cast, client)
		const row = rowOf(route)
		const changed = await changes(async () => {
			const path = pathOf(row, String(things[thing]), things)
			const said = await open.ask(person, path, { method: 'POST', ...bodyFor(row, things, null) })
			expect([outcomeOf(said), String(said.headers.location).includes('form=')]).toEqual(['elsewhere', false])
		})
		expect(changed).toEqual(expect.arrayContaining(['event', 'once', 'visit']))
	})
})

describe('at the kerb', () => {
	it('the designer writes down a place and its containers', async () => {
		const things = thingsOf(open.site.folder, open.site.cast, 'stucco')
		const row = rowOf('/studio/clients/[client]/kerb/keep')
		const changed = await changes(async () => {
			const path = pathOf(row, things.client, things)
			const said = await open.ask('designer', path, { method: 'POST', ...bodyFor(row, things, null) })
			expect([outcomeOf(said), String(said.headers.location).includes('told=sent')]).toEqual(['elsewhere', true])
		})
		expect(changed).toEqual(['container', 'event', 'once', 'place'])
	})
})

describe('the designer', () => {
	it('saves a draft', async () => {
		const { folder, cast } = open.site
		const things = thingsOf(folder, cast, 'clapboard')
		const row = rowOf('/studio/proposal/[proposal]/save')
		const changed = await changes(async () => {
			const body = bodyFor(row, things, draftOf(folder, things.proposal))
			expect(
				outcomeOf(await open.ask('designer', pathOf(row, things.proposal, things), { method: 'POST', ...body })),
			).toBe('data')
		})
		expect(changed).toEqual(['draft'])
	})

	/** Another season, another name: what can be there once only. */
	const again: Readonly<Record<string, Fields>> = {
		plan: [['quarter', 'summer']],
		begin: [],
		saveDesign: [['name', 'Kelp and slate']],
		changeAddress: [['address', 'moved-too@elsewhere.example']],
		saveTemplate: [
			['version', '2'],
			['clause.0.title', 'Who is who'],
		],
		hire: [['address', 'ysolt@sedgeandlantern.example']],
		saveMaterial: [['name', 'Winterberry, short']],
		saveSupplier: [['name', 'Ferrow and Sons']],
		saveRecipe: [['name', 'Winterberry again']],
		saveRates: [
			['version', '2'],
			['depositPercent', '42'],
		],
	}
	const inOrder = [
		'publish',
		'remind',
		'remindAll',
		'saveClient',
		'invite',
		'savePlace',
		'addColour',
		'saveContainer',
		'steer',
		'saveTerms',
		'issue',
		'remindSigner',
		'remindSigners',
		'takeBack',
		'takeChange',
		'takeSkip',
		'takeApproval',
		'changeAddress',
		'endContact',
	]
	/** What nothing comes of here: nobody is late on the day on which they are asked. */
	const vain = ['remindWhoIsLate']
	const others = actionRows.map(({ name }) => name).filter((name) => !inOrder.includes(name) && !vain.includes(name))
	const names = [...inOrder, ...others]

	/** To whom it is done, with scripts and without, where that is not everybody's. */
	const clientOf = new Map<string, readonly ['clapboard' | 'vet' | 'dental', 'fieldstone' | 'dental']>([
		// Who has paid more than was due.
		['payBack', ['dental', 'dental']],
		...['saveTerms', 'issue', 'remindSigner', 'remindSigners', 'takeBack'].map(
			(name) => [name, ['clapboard', 'fieldstone']] as const,
		),
		['endAgreement', ['vet', 'dental']],
	])
	/** Forms that ask for a client of whom there is something to begin, or to ask for. */
	const clientAlone = new Map<string, readonly ['chandlery' | 'newcomer', 'bicycles' | 'newcomer' | 'vet']>([
		['beginAgreement', ['newcomer', 'newcomer']],
		['billWhatIsDue', ['chandlery', 'bicycles']],
		...['begin', 'startFrom'].map((name) => [name, ['newcomer', 'vet']] as const),
	])
	const thingsFor = (name: string, client: 'clapboard' | 'stucco'): Things => {
		const { folder, cast } = open.site
		const nth = client === 'clapboard' ? 0 : 1
		const own = clientOf.get(name)?.[nth]
		if (own !== undefined) return thingsOf(folder, cast, own)
		const things = thingsOf(folder, cast, name === 'beginAgreement' ? 'bakery' : client)
		const alone = clientAlone.get(name)?.[nth]
		if (alone === undefined) return things
		const season = cast.seasons[client === 'clapboard' ? 'winter' : 'autumn']
		return { ...things, client: cast.clients[alone].id, season }
	}
	/** Both have to have signed before it can be ended. */
	const signFirst = async (name: string, { agreement, document }: Things) => {
		if (name !== 'endAgreement') return
		const signedOn = dayOf(moment(new Date()), open.site.cast.studio.timeZone)
		const fields = { once: v7(), agreement: agreement ?? '', document, signer: 'Somebody', signedOn }
		const said = await open.ask('designer', `/studio/agreements/${agreement}/paper`, {
			method: 'POST',
			...scanned(fields),
		})
		expect(said.headers.location).toContain('told=paper')
	}
	/** What was taken back or answered has to be out again before an answer can be taken down. */
	const outFirst = async (name: string, client: 'clapboard' | 'stucco') => {
		if (!name.startsWith('take')) return
		const things = thingsFor('publish', client)
		const out = called(actionNamed('publish').id, formOf('publish', things))
		await open.ask('designer', pageWith('publish', things), { method: 'POST', ...out })
	}

	it.each(names)('%s, with scripts', async (name) => {
		await outFirst(name, 'clapboard')
		const things = thingsFor(name, 'clapboard')
		await signFirst(name, things)
		const changed = await changes(async () => {
			const call = called(actionNamed(name).id, formOf(name, things))
			const said = await open.ask('designer', pageWith(name, things), { method: 'POST', ...call })
			expect([outcomeOfCall(said), String(said.headers['x-action-redirect']).includes('form=')]).toEqual([
				'elsewhere',
				false,
			])
		})
		expect(changed).toContain(name === 'saveTerms' ? 'agreement_draft' : 'event')
	})

	it.each(vain)('%s is told why not, and nothing changes', async (name) => {
		const things = thingsFor(name, 'clapboard')
		const changed = await changes(async () => {
			const form = posted(actionNamed(name).id, formOf(name, things))
			const said = await open.ask('designer', pageWith(name, things), { method: 'POST', ...form })
			expect([outcomeOf(said), String(said.headers.location)]).toEqual(['elsewhere', expect.stringContaining('form=')])
		})
		expect(changed).toEqual([])
	})

	it.each(names)('%s, without scripts', async (name) => {
		await outFirst(name, 'stucco')
		const things = thingsFor(name, 'stucco')
		await signFirst(name, things)
		const changed = await changes(async () => {
			const form = posted(actionNamed(name).id, over(formOf(name, things), again[name] ?? []))
			const said = await open.ask('designer', pageWith(name, things), { method: 'POST', ...form })
			expect([outcomeOf(said), String(said.headers.location).includes('form=')]).toEqual(['elsewhere', false])
		})
		expect(changed).toContain(name === 'saveTerms' ? 'agreement_draft' : 'event')
	})
})

/** What stands for each of somebody's sessions on their page, but for the one that asks. */
async function handlesOf(person: PersonName): Promise<string[]> {
	const { body } = await open.ask(person, '/devices')
	return [...body.matchAll(/name="session" value="([0-9a-f]{32})"/g)].map(([, handle = '']) => handle)
}

describe('everybody', () => {
	it.each(persons)('%s may ask for a link', async (person) => {
		const changed = await changes(async () => {
			const form = urlencoded([['address', `${person.replaceAll(' ', '-')}@elsewhere.example`]])
			expect(outcomeOf(await open.ask(person, '/sign-in/ask', { method: 'POST', ...form }))).toBe('elsewhere')
		})
		expect(changed).toEqual(['outbox'])
	})

	const signedIn = [
		'designer',
		'helper',
		'approver',
		'looker',
		'payer',
		'other approver',
		'two doors',
	] as const satisfies readonly PersonName[]
	const who = { designer: 'designer', helper: 'helper', ...contacts } as const
	it.each(signedIn)('%s signs out of this one session', async (person) => {
		const { folder, url, cast } = open.site
		const of = cast.people[who[person]].id
		const session = openSession(folder, of)
		const count = () =>
			record(folder, (db) => db.prepare('SELECT count(*) FROM session WHERE user_id = ?').pluck().get(of))
		const before = count()
		const changed = await changes(async () => {
			const out = await send(url, '/sign-out', { method: 'POST', session, ...urlencoded([['x', '1']]) })
			expect(outcomeOf(out)).toBe('sign-in')
		})
		expect(changed).toEqual(['session'])
		expect(count()).toBe(Number(before) - 1)
		expect(outcomeOf(await send(url, '/', { session }))).toBe('sign-in')
	})

	it.each(signedIn)('%s ends another session of theirs, by what stands for it on the page', async (person) => {
		const { folder, url, cast } = open.site
		const of = cast.people[who[person]].id
		const before = new Set(await handlesOf(person))
		const session = openSession(folder, of)
		const [handle = 'none'] = (await handlesOf(person)).filter((each) => !before.has(each))
		const end = urlencoded([['session', handle]])
		const stranger = person === 'designer' ? 'helper' : 'designer'
		const foreign = await open.ask(stranger, '/devices/end', { method: 'POST', ...end })
		expect([outcomeOf(foreign), outcomeOf(await send(url, '/devices', { session }))]).toEqual(['hidden', 'page'])
		const changed = await changes(async () => {
			const said = await open.ask(person, '/devices/end', { method: 'POST', ...end })
			expect([outcomeOf(said), said.headers.location]).toEqual(['elsewhere', '/devices?ended'])
		})
		expect(changed).toEqual(['session'])
		expect(outcomeOf(await send(url, '/devices', { session }))).toBe('sign-in')
		expect(outcomeOf(await open.ask(person, '/devices/end', { method: 'POST', ...end }))).toBe('hidden')
	})

	// The last of this file: nobody is signed in after it.
	it.each(signedIn)('%s signs out everywhere', async (person) => {
		const { folder, url, cast } = open.site
		const of = cast.people[who[person]].id
		const [here, there] = [openSession(folder, of), openSession(folder, of)]
		const changed = await changes(async () => {
			const { body, headers } = urlencoded([['x', '1']])
			const cookie = `doorsill=${here}; doorsill-browser=a; next-auth.callback-url=b`
			const sending = { method: 'POST', body, headers: { ...headers, cookie } }
			const out = await send(url, '/devices/everywhere', sending)
			const gone = (out.headers['set-cookie'] ?? []).filter((line) => line.includes('Max-Age=0'))
			expect([outcomeOf(out), out.headers['clear-site-data']]).toEqual(['sign-in', '"cache", "storage"'])
			const names = gone.map((line) => line.split('=')[0])
			expect(names.toSorted()).toEqual(['doorsill', 'doorsill-browser', 'next-auth.callback-url'])
		})
		expect(changed.toSorted()).toEqual(['known_device', 'session'])
		for (const session of [here, there]) expect(outcomeOf(await send(url, '/devices', { session }))).toBe('sign-in')
		expect(outcomeOf(await open.ask(person, '/devices'))).toBe('sign-in')
	})
})
