import { v7 } from 'uuid'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { formOf, pageWith } from './ask/bodies'
import { actionNamed } from './ask/build'
import { crawl } from './ask/crawl'
import { type Fields, json, multipart, posted, urlencoded } from './ask/forms'
import { type Answer, inParallel, send } from './ask/send'
import { aliveIn, escaped, type Hostile, isStored, type Kind, triedIn } from './look/hostile'
import { type OpenSite, openSite } from './site/open'
import { openSession } from './site/people'
import { mailIsOut, snapshot } from './site/snapshot'
import { draftOf, type Things, thingsOf } from './site/things'

let open: OpenSite
let tries = 0

beforeAll(async () => {
	open = await openSite()
})

afterAll(async () => {
	process.stdout.write(`bad input in the studio's forms: ${tries} tried\n`)
	await open.close()
})

type Form = {
	readonly fields: Readonly<Record<string, Kind>>
	readonly empty?: readonly string[]
	/** Fields that a person does not see. */
	readonly hidden: readonly string[]
}

const measures = [
	'topCm',
	'topDepthCm',
	'bottomCm',
	'bottomDepthCm',
	'heightCm',
	'wallCm',
	'headspaceCm',
	'soilDepthCm',
] as const
const numbersOf = (names: readonly string[]): Record<string, Kind> =>
	Object.fromEntries(names.map((name) => [name, 'number']))

/** Every field of every form of the studio, by what it is for. */
const forms: Readonly<Record<string, Form>> = {
	plan: {
		fields: { quarter: 'choice', year: 'number', answerBy: 'day', windowFrom: 'day', windowTo: 'day' },
		hidden: [],
	},
	begin: { fields: { client: 'id', season: 'id' }, hidden: ['client', 'season'] },
	remind: {
		fields: { proposal: 'id', season: 'id', page: 'number', again: 'choice' },
		hidden: ['proposal', 'season', 'page', 'again'],
	},
	publish: { fields: { proposal: 'id', version: 'number' }, hidden: ['proposal', 'version'] },
	steer: { fields: { proposal: 'id', step: 'choice', reason: 'lines' }, hidden: ['proposal', 'step'] },
	saveClient: {
		fields: {
			client: 'id',
			kind: 'choice',
			name: 'words',
			netDays: 'choice',
			exemptCertificate: 'words',
			exemptExpires: 'day',
			studioNote: 'lines',
		},
		hidden: ['client'],
	},
	invite: { fields: { client: 'id', name: 'words', address: 'address', may: 'choice' }, hidden: ['client'] },
	endContact: { fields: { client: 'id', contact: 'id' }, hidden: ['client', 'contact'] },
	savePlace: {
		fields: {
			client: 'id',
			place: 'id',
			name: 'words',
			address: 'lines',
			taxPercent: 'number',
			driveMinutes: 'number',
			zone: 'money',
			wallKind: 'choice',
			wallHex: 'hex',
			doorHex: 'hex',
			accessNote: 'lines',
		},
		empty: ['zone'],
		hidden: ['client', 'place'],
	},
	addColour: {
		fields: { client: 'id', place: 'id', hex: 'hex', name: 'words', side: 'choice' },
		hidden: ['client', 'place'],
	},
	saveContainer: {
		fields: {
			...{ client: 'id', place: 'id', container: 'id', name: 'words', shape: 'choice' },
			...numbersOf([...measures, 'vesselKg', 'sillToGlassCm', 'walkLeftCm']),
			...{
				wall: 'choice',
				hasDrainHole: 'tick',
				colour: 'hex',
				owner: 'choice',
				light: 'choice',
				waterer: 'choice',
				stands: 'choice',
				limitedWeight: 'choice',
			},
		},
		empty: [
			'topDepthCm',
			'bottomDepthCm',
			'wallCm',
			'headspaceCm',
			'soilDepthCm',
			'vesselKg',
			'sillToGlassCm',
			'walkLeftCm',
		],
		hidden: ['client', 'place', 'container'],
	},
	saveMaterial: {
		fields: {
			material: 'id',
			name: 'words',
			kind: 'choice',
			piece: 'choice',
			role: 'choice',
			unit: 'choice',
			piecesPerUnit: 'number',
			hex: 'hex',
			isPoisonousToPets: 'tick',
			supplier: 'words',
			size: 'number',
			price: 'money',
			freightPercent: 'number',
		},
		hidden: ['material'],
	},
	hire: { fields: { helper: 'words', address: 'address' }, hidden: [] },
	endStaff: { fields: { member: 'id' }, hidden: ['member'] },
	saveSettings: { fields: { name: 'words', timeZone: 'choice', currency: 'choice', lengths: 'choice' }, hidden: [] },
}

const cases = Object.entries(forms).flatMap(([form, { fields }]) =>
	Object.entries(fields).map(([field, kind]) => ({ form, field, kind })),
)

const things = (): Things => thingsOf(open.site.folder, open.site.cast, 'clapboard')
const withField = (fields: Fields, name: string, value: string | Buffer): Fields =>
	fields.map((each) => (each[0] === name ? [name, value] : each))

async function fill(form: string, change: (fields: Fields) => Fields): Promise<Answer> {
	tries += 1
	const own = things()
	const sending = posted(actionNamed(form).id, change(formOf(form, own)))
	return open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })
}

const placeOf = ({ headers }: Answer) => String(headers.location ?? '')

/** Of a field that nobody sees: any answer will do that fails nothing and lets nothing live. */
async function unsaidOfHidden(answer: Answer): Promise<string | null> {
	if (answer.status === 404) return null
	if (answer.status !== 303) return `answered ${answer.status}`
	const page = await open.ask('designer', placeOf(answer))
	return page.status < 500 && aliveIn(page.body).length === 0 ? null : `the page answered ${page.status}`
}

/** What is wrong with how a refusal is told on the form's own page, with all that was typed; null when nothing is. */
async function unsaid(form: string, field: string, answer: Answer, typed: string | Buffer): Promise<string | null> {
	if (forms[form]?.hidden.includes(field)) return unsaidOfHidden(answer)
	const path = placeOf(answer)
	if (answer.status !== 303 || !path.includes('form='))
		return `answered ${answer.status}, led on to ${path.slice(0, 80)}`
	const page = await open.ask('designer', path)
	if (page.status !== 200) return `the form answered ${page.status}`
	if (aliveIn(page.body).length > 0) return 'alive in the page'
	if (!page.body.includes('role="alert"')) return 'the form says nothing'
	const isBox = !['choice', 'tick'].includes(forms[form]?.fields[field] ?? '')
	const shown = typeof typed === 'string' && !/[\u0000-\u001f]/.test(typed) ? escaped(typed) : ''
	return isBox && !page.body.includes(shown) ? 'what was typed is gone' : null
}

async function refusesAll(form: string, field: string, values: readonly Hostile[]): Promise<void> {
	await mailIsOut(open.site.folder)
	const before = snapshot(open.site.folder)
	const wrong: string[] = []
	await inParallel(values, 6, async ({ what, value }) => {
		const answer = await fill(form, (fields) => withField(fields, field, value))
		const why = await unsaid(form, field, answer, value)
		if (why !== null) wrong.push(`${what}: ${why}`)
	})
	expect(wrong.toSorted()).toEqual([])
	expect(snapshot(open.site.folder)).toEqual(before)
}

/** What is withdrawn has to be out again before it can be withdrawn once more; who is in has to leave to be let in. */
const again = (form: string) => {
	const before = new Map([
		['steer', 'publish'],
		['hire', 'endStaff'],
	]).get(form)
	return before === undefined ? undefined : fill(before, (fields) => fields)
}

const valuesFor = ({ form, field, kind }: (typeof cases)[number]) => triedIn(kind, forms[form]?.empty?.includes(field))

describe('refuses what the field is not for, says so, and changes nothing', () => {
	it.each(cases)('$form, $field', async (each) => {
		const refused = valuesFor(each).filter((value) => !isStored(each.kind, value))
		await refusesAll(each.form, each.field, refused)
	})
})

describe('keeps what is text and shows it as text', () => {
	it.each(cases.filter(({ kind }) => kind === 'words' || kind === 'lines'))('$form, $field', async (each) => {
		const { form, field, kind } = each
		for (const { what, value } of valuesFor(each).filter((value) => isStored(kind, value))) {
			await again(form)
			const before = snapshot(open.site.folder)
			const answer = await fill(form, (fields) => withField(fields, field, value))
			const page = await open.ask('designer', placeOf(answer))
			const found = [what, answer.status, placeOf(answer).includes('form='), page.status, aliveIn(page.body)]
			expect(found).toEqual([what, 303, false, 200, []])
			expect(snapshot(open.site.folder)).not.toEqual(before)
		}
	})
})

describe('a form that is not as the page made it', () => {
	const names = Object.keys(forms)
	const changed = async (form: string, change: (fields: Fields) => Fields) => {
		await mailIsOut(open.site.folder)
		const before = snapshot(open.site.folder)
		const answer = await fill(form, change)
		expect(snapshot(open.site.folder)).toEqual(before)
		return answer
	}

	it.each(names)('%s with a field more is refused', async (form) => {
		for (const name of ['priceCents', 'studio', 'constructor', 'toString', 'hasOwnProperty'])
			expect((await changed(form, (fields) => [...fields, [name, '1']])).status).toBe(303)
	})

	it.each(names)('%s without a field is refused', async (form) => {
		const optional = ['again', 'hasDrainHole', 'isPoisonousToPets']
		for (const [name] of formOf(form, things()).filter(([each]) => !optional.includes(each)))
			expect([name, (await changed(form, (fields) => fields.filter(([each]) => each !== name))).status]).toEqual([
				name,
				303,
			])
	})

	it.each(names)('%s without its key, or with one that is none', async (form) => {
		for (const value of ['', 'none', '<script>alert(1)</script>', '0'.repeat(36)])
			expect((await changed(form, (fields) => withField(fields, 'once', value))).status).toBe(303)
	})

	it.each(names)('%s of nothing, or of fields without end', async (form) => {
		expect((await changed(form, () => [])).status).toBe(303)
		const many = Array.from({ length: 1200 }, (_, index) => [`f${index}`, 'x'] as const)
		expect((await changed(form, (fields) => [...fields, ...many])).status).toBeLessThan(500)
	})

	it.each(names)('%s sent twice changes nothing the second time', async (form) => {
		const own = things()
		if (form === 'endContact') return
		const sending = posted(actionNamed(form).id, formOf(form, own))
		const send = () => open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })
		await again(form)
		await send()
		await mailIsOut(open.site.folder)
		const before = snapshot(open.site.folder)
		const second = await send()
		expect(second.status).toBe(303)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	const fresh = {
		saveClient: 'client',
		savePlace: 'place',
		saveContainer: 'container',
		saveMaterial: 'material',
	} as const
	it.each(Object.entries(fresh))('%s of something new, pressed twice at once, makes one', async (form, field) => {
		const own = things()
		const fields = withField(withField(formOf(form, own), field, ''), 'name', `Twice ${form}`)
		const sending = posted(actionNamed(form).id, fields)
		const before = snapshot(open.site.folder)[field]?.split(' ')[0]
		await Promise.all([1, 2, 3].map(() => open.ask('designer', pageWith(form, own), { method: 'POST', ...sending })))
		expect(Number(snapshot(open.site.folder)[field]?.split(' ')[0])).toBe(Number(before) + 1)
	})

	it('things of two clients mixed are things that are not there', async () => {
		const theirs = thingsOf(open.site.folder, open.site.cast, 'stucco')
		for (const [form, field, id] of [
			['savePlace', 'place', theirs.place],
			['addColour', 'place', theirs.place],
			['saveContainer', 'place', theirs.place],
			['saveContainer', 'container', theirs.container],
			['endContact', 'contact', theirs.contact],
		] as const)
			expect([form, field, (await changed(form, (fields) => withField(fields, field, id))).status]).toEqual([
				form,
				field,
				404,
			])
	})
})

describe('what the studio wrote, however hostile', () => {
	const picture = '"><img src=x onerror=alert(1)>'

	it('reaches its client and its helper as text: pages, parts, mail', async () => {
		const own = things()
		for (const [form, field] of [
			['saveClient', 'name'],
			['savePlace', 'name'],
			['savePlace', 'address'],
			['savePlace', 'accessNote'],
			['saveContainer', 'name'],
			['saveSettings', 'name'],
		] as const)
			expect((await fill(form, (fields) => withField(fields, field, picture))).status).toBe(303)
		const kept = draftOf(open.site.folder, own.proposal)
		const next = {
			...kept,
			title: picture,
			letter: `${picture}\n\n${picture}`,
			options: kept.options.map((option) => ({
				...option,
				palette: option.palette.map((colour) => ({ ...colour, name: picture, echoes: picture })),
			})),
			extras: kept.extras.map((extra) => ({ ...extra, words: picture })),
		}
		const saved = await open.ask('designer', `/studio/proposal/${own.proposal}/save`, {
			method: 'POST',
			...json({ version: own.version, draft: next }),
		})
		expect(saved.status).toBe(200)
		await again('steer')
		await mailIsOut(open.site.folder)
		const session = openSession(open.site.folder, open.site.cast.people.clapboardApprover.id)
		const reads = await crawl(
			(path, sending) => send(open.site.url, path, { session, ...sending }),
			['/', `/proposal/${own.proposal}?option=a`],
		)
		const answer = urlencoded([
			['once', v7()],
			['revision', things().revision],
			['option', 'a'],
			['purchaseOrder', picture],
		])
		const said = await send(open.site.url, `/proposal/${own.proposal}/answer/approve`, {
			method: 'POST',
			session,
			...answer,
		})
		expect(said.headers.location).toMatch(/\/done$/)
		await mailIsOut(open.site.folder)
		const helper = await open.ask('helper', '/studio/install')
		for (const { path, answer: page } of [...reads, { path: 'install', answer: helper }])
			if (String(page.headers['content-type']).startsWith('text/html'))
				expect([path, page.status < 500, aliveIn(page.body)]).toEqual([path, true, []])
		expect(
			[helper.body, ...reads.map(({ answer: page }) => page.body)].filter((body) => body.includes(escaped(picture)))
				.length,
		).toBeGreaterThan(3)
		const letters = open.postbox.letters.filter(({ html }) => html.includes('&lt;img src=x'))
		expect(letters.length).toBeGreaterThan(1)
		for (const { html, head } of letters) expect([aliveIn(html), head.includes('\nBcc')]).toEqual([[], false])
	})
})

describe('figures at their bounds', () => {
	const at = async (form: string, field: string, value: string) => {
		const answer = await fill(form, (fields) => withField(fields, field, value))
		return answer.status === 303 && !placeOf(answer).includes('form=')
			? 'kept'
			: answer.status === 303
				? 'refused'
				: answer.status
	}
	it.each([
		['saveMaterial', 'size', ['0.01', '100000'], ['0', '0.000', '100000.001', '0.0001']],
		[
			'saveMaterial',
			'price',
			['0', '0.01', '100000', '100000.00', '12.5'],
			['100000.01', '9999999.99', '12.505', '.5', '1.', '$5', '1,000'],
		],
		['saveMaterial', 'piecesPerUnit', ['0.001', '10000'], ['0', '10000.001']],
		['saveMaterial', 'freightPercent', ['0', '100', '4.125'], ['100.001']],
		['savePlace', 'taxPercent', ['0', '30', '8.875'], ['30.001', '6.6255']],
		['savePlace', 'driveMinutes', ['0', '600'], ['600.001']],
		['savePlace', 'zone', ['', '0', '100000'], ['100000.01', '9999999.99']],
		['saveContainer', 'topCm', ['2', '393'], ['1.9', '394', '0']],
		['saveContainer', 'heightCm', ['196'], ['197', '1']],
		['saveContainer', 'wallCm', ['0', '6.9'], ['7', '8']],
		['saveContainer', 'headspaceCm', ['0', '18'], ['19.7', '20']],
		['saveContainer', 'vesselKg', ['0', '2000'], ['2000.001']],
		['plan', 'year', [], ['1999', '2100', '20311', '31']],
		['remind', 'page', ['0', '99999'], ['100000']],
	] as const)('%s, %s', async (form, field, kept, refused) => {
		const found = [...kept, ...refused].map(async (value) => [value, await at(form, field, value)] as const)
		const wanted = [...kept.map((value) => [value, 'kept']), ...refused.map((value) => [value, 'refused'])]
		expect(await Promise.all(found)).toEqual(wanted)
	})

	it('a day that the calendar has not, dates out of order, half a certificate', async () => {
		for (const value of ['2031-02-29', '2031-13-01', '31-01-01', '2031-1-1', 'tomorrow', '+002031-01-01'])
			expect([value, await at('plan', 'windowTo', value)]).toEqual([value, 'refused'])
		expect(await at('plan', 'windowTo', '2031-02-28')).toBe('refused')
		expect(await at('plan', 'answerBy', '2031-03-02')).toBe('refused')
		expect(await at('saveClient', 'exemptExpires', '')).toBe('refused')
		expect(await at('saveClient', 'exemptCertificate', '')).toBe('refused')
	})
})

describe('what the doors of the public take', () => {
	const backToAsking = /^\/sign-in\?to=[^&]*&form=[0-9a-f-]{36}$/
	const alive = async (path: string) => aliveIn((await open.ask('signed out', path)).body)
	const post = (path: string, fields: Fields) => open.ask('signed out', path, { method: 'POST', ...multipart(fields) })

	it.each(triedIn('address'))('an address that is $what', async ({ value }) => {
		await mailIsOut(open.site.folder)
		const before = snapshot(open.site.folder)
		for (const field of ['address', 'handle']) {
			const answer = await post('/sign-in/ask', [
				[field, value],
				['to', value],
			])
			expect([field, answer.status, backToAsking.test(placeOf(answer))]).toEqual([field, 303, true])
			expect(await alive(placeOf(answer))).toEqual([])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each([
		'a@x.example,b@y.example',
		'"a@x.example"@elsewhere.example',
		'a@@x.example',
		'a@x.example\r\nBcc: b@y.example',
		'a b@x.example',
		'<a@x.example>',
		'a@x',
		`${'a'.repeat(250)}@x.example`,
		'a@[127.0.0.1]',
	])('no mail address: %j', async (address) => {
		const before = snapshot(open.site.folder)
		expect(placeOf(await post('/sign-in/ask', [['address', address]]))).toMatch(backToAsking)
		expect(snapshot(open.site.folder)).toEqual(before)
	})

	it.each(triedIn('number'))('a code, a cookie, a link that is $what', async ({ value }) => {
		const before = snapshot(open.site.folder)
		const cookie = `doorsill-ask=${encodeURIComponent(JSON.stringify({ ask: value.toString(), address: value.toString(), handle: '', to: '//e.example' }).slice(0, 3000))}`
		const { body, headers } = multipart([['code', value]])
		const code = await open.ask('signed out', '/sign-in/code', {
			method: 'POST',
			body,
			headers: { ...headers, cookie },
		})
		expect(code.status).toBe(303)
		for (const path of ['/sign-in/sent', '/sign-in/over']) {
			const page = await open.ask('signed out', path, { headers: { cookie } })
			expect([page.status < 500, aliveIn(page.body)]).toEqual([true, []])
		}
		const query = new URLSearchParams({
			token: value.toString(),
			callbackUrl: value.toString(),
			for: value.toString(),
			to: value.toString(),
		})
		for (const path of ['/sign-in/confirm', '/sign-in', '/set-up', '/api/auth/callback/email']) {
			const page = await open.ask('signed out', `${path}?${query}`)
			expect([path, page.status < 500 || page.status === 431, aliveIn(page.body)]).toEqual([path, true, []])
		}
		expect(snapshot(open.site.folder)).toEqual(before)
	})
})
