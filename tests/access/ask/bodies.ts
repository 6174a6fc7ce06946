import { v7 } from 'uuid'
import { ratesText } from '@/lib/forms/rates/rates-form'
import { defaultRates } from '@/lib/pricing/rates'
import type { Things } from '../site/things'
import type { Row } from '../table/rows'
import { agreementForms, isAgreementForm } from './agreement-forms'
import { actionNamed } from './build'
import { type Body, type Fields, json, multipart, over, urlencoded } from './forms'
import { moneyForms } from './money-forms'
import { studioAgreementForms } from './studio-agreement-forms'

/** Forms as the pages make them, filled in so that they would go through if the right person sent them. */
type Form = (things: Things) => Fields

const once = () => ['once', v7()] as const

export const answerForms: Readonly<Record<'approve' | 'change' | 'skip', Form>> = {
	approve: ({ revision }) => [once(), ['revision', revision], ['option', 'a'], ['purchaseOrder', 'PO 7']],
	change: ({ revision }) => [once(), ['revision', revision], ['about', 'whole'], ['note', 'A little taller, please.']],
	skip: ({ revision }) => [once(), ['revision', revision], ['why', 'We are away.']],
}

const traits: Fields = [
	['form', 'berries'],
	['secondHex', '#5d5148'],
	['lengthCm', '24'],
	['acrossCm', '7'],
	['hadFrom', '10'],
	['hadTo', '12'],
	['lastsFrom', '11'],
	['lastsTo', '2'],
	['zone', '3b'],
	['needs', 'sun or part'],
	['spacingCm', ''],
	['rootBallLitres', ''],
	['kgEach', '0.09'],
	['watts', ''],
	['mostEndToEnd', ''],
	['regulated', ''],
]

const card: Fields = [
	['name', 'By the gate'],
	['shape', 'round'],
	['topCm', '18'],
	['topDepthCm', ''],
	['bottomCm', '14'],
	['bottomDepthCm', ''],
	['heightCm', '20'],
	['wall', 'terracotta'],
	['wallCm', ''],
	['headspaceCm', ''],
	['soilDepthCm', ''],
	['hasDrainHole', 'on'],
	['vesselKg', '11.5'],
	['colour', '#7a3a2e'],
	['owner', 'client'],
	['light', 'sun'],
	['sillToGlassCm', ''],
	['waterer', 'client'],
	['stands', 'all round'],
	['limitedWeight', 'none'],
	['walkLeftCm', ''],
]

/** One row of a recipe's card; its last is ticked to go. */
const recipeLine = (at: string, material: string, count: string): Fields => [
	['at', at],
	['material', material],
	['role', 'filler'],
	['holding', 'sold'],
	['way', 'greens'],
	['count', count],
	['holds', ''],
]

/** An answer that the studio takes down. */
const byPhone = ({ proposal, revision }: Things): Fields => [
	once(),
	['proposal', proposal],
	['revision', revision],
	['said', 'Odile at the counter'],
]

const actionForms: Readonly<Record<string, Form>> = {
	...studioAgreementForms,
	plan: () => [
		once(),
		['quarter', 'spring'],
		['year', '2031'],
		['answerBy', '2031-02-10'],
		['windowFrom', '2031-03-01'],
		['windowTo', '2031-03-12'],
	],
	begin: ({ client, season }) => [once(), ['client', client], ['season', season]],
	saveCollectionWords: ({ season, collection }) => [
		once(),
		['season', season],
		['version', String(collection)],
		['title', 'Winter at the door'],
		['letter', 'Held against your wall.'],
	],
	saveDesign: ({ season, collection, recipe }) => [
		once(),
		['season', season],
		['version', String(collection)],
		['design', 'd1'],
		['name', 'Kelp and sand'],
		['hex', '#3d6147'],
		['colour', 'Kelp'],
		['hex', '#d8d0c1'],
		['colour', 'Sand'],
		['pot', recipe],
		['box', ''],
		['bowl', ''],
		['does', 'keep'],
	],
	saveCollectionExtra: ({ season, collection, material }) => [
		once(),
		['season', season],
		['version', String(collection)],
		['extra', 'd1'],
		['name', 'A wreath'],
		['words', 'For the door itself.'],
		['minutes', '12.5'],
		['material', `${material} accent`],
		['count', '3'],
		['holding', 'sold'],
		['does', 'keep'],
	],
	applyToClients: ({ season, client }) => [once(), ['season', season], ['options', '2'], ['client', client]],
	startFrom: ({ season, client, recipe }) => [
		once(),
		['season', season],
		['client', client],
		['from', 'recipe'],
		['which', recipe],
	],
	remind: ({ proposal, season }) => [
		once(),
		['proposal', proposal],
		['season', season],
		['page', '1'],
		['ask', ''],
		['again', 'yes'],
	],
	remindAll: ({ season }) => [once(), ['season', season], ['again', 'on']],
	takeApproval: (things) => [...byPhone(things), ['option', 'a'], ['purchaseOrder', '']],
	takeChange: (things) => [...byPhone(things), ['about', 'whole'], ['note', 'A little taller.']],
	takeSkip: (things) => [...byPhone(things), ['why', 'They are away.']],
	publish: ({ proposal, version }) => [once(), ['proposal', proposal], ['version', String(version)]],
	steer: ({ proposal }) => [
		once(),
		['proposal', proposal],
		['step', 'withdraw'],
		['reason', 'A pot broke.'],
		['remains', ''],
	],
	saveClient: ({ client }) => [
		once(),
		['client', client],
		['kind', 'business'],
		['name', 'Marrowby & Daughters'],
		['netDays', '15'],
		['exemptCertificate', 'EX 19'],
		['exemptExpires', '2031-06-30'],
		['studioNote', 'Ring twice.'],
	],
	invite: ({ client }) => [
		once(),
		['client', client],
		['name', 'Wynn Marrowby'],
		['address', 'wynn@marrowbybakery.example'],
		['may', 'look'],
	],
	changeAddress: ({ client, contact }) => [
		once(),
		['client', client],
		['contact', contact],
		['address', 'moved@elsewhere.example'],
	],
	endContact: ({ client, contact }) => [once(), ['client', client], ['contact', contact]],
	savePlace: ({ client, place }) => [
		once(),
		['client', client],
		['place', place],
		['name', 'Back door'],
		['address', '3 Quay Row'],
		['taxPercent', '6.625'],
		['driveMinutes', '13'],
		['zone', ''],
		['wallKind', 'brick'],
		['wallHex', '#8a4a3a'],
		['doorHex', '#2e3a4a'],
		['hardinessZone', '6b'],
		['accessNote', 'Key under the third pot.'],
	],
	addColour: ({ client, place }) => [
		once(),
		['client', client],
		['place', place],
		['hex', '#6d3049'],
		['name', 'awning'],
		['side', 'outside'],
	],
	addColours: ({ client, place }) => [
		once(),
		['client', client],
		['place', place],
		['hex', '#a98b5d'],
		['name', 'brass'],
		['side', 'inside'],
		['spotX', '0.2500'],
		['spotY', '0.8125'],
	],
	renameColour: ({ client, colour }) => [once(), ['client', client], ['colour', colour], ['name', 'old brass']],
	mergeColours: ({ client, colour, otherColour }) => [
		once(),
		['client', client],
		['colour', colour],
		['other', otherColour],
	],
	dropColour: ({ client, colour }) => [once(), ['client', client], ['colour', colour]],
	saveContainer: ({ client, place, container }) => [
		once(),
		['client', client],
		['place', place],
		['container', container],
		...card,
	],
	saveMaterial: ({ material }) => [
		once(),
		['material', material],
		['name', 'Winterberry, long'],
		['kind', 'fresh'],
		['piece', 'branch'],
		['role', 'accent'],
		['unit', 'stem'],
		['piecesPerUnit', '12'],
		['hex', '#a81c2c'],
		['isPoisonousToPets', 'on'],
		...traits,
		['supplier', 'Harbour Greens'],
		['size', '10'],
		['price', '83.50'],
		['freightPercent', '4'],
	],
	keepStock: ({ material, client }) => [
		once(),
		['material', material],
		['client', client],
		['quantity', '14.5'],
		['usesBefore', '2'],
	],
	saveSupplier: ({ supplier }) => [
		once(),
		['supplier', supplier],
		['name', 'Ferrow Growers'],
		['leadDays', '9'],
		['note', 'By rail, on Fridays.'],
	],
	saveRecipe: ({ material, recipe }) => [
		once(),
		['recipe', recipe],
		['name', 'Winterberry alone'],
		['quarter', 'winter'],
		['note', 'Late.'],
		...recipeLine('1', material, '12'),
		...recipeLine('2', material, '5'),
		...recipeLine('', material, '1'),
		['remove', '2'],
	],
	saveRates: () => [
		once(),
		['version', '1'],
		['step', 'save'],
		...Object.entries(ratesText({ ...defaultRates, depositPercent: 41 })).filter(([, text]) => text !== ''),
	],
	saveSettings: () => [
		once(),
		['name', 'Sedge & Lantern II'],
		['timeZone', 'America/New_York'],
		['currency', 'USD'],
		['lengths', 'in'],
	],
	hire: () => [once(), ['helper', 'Perrin Ashgrove'], ['address', 'perrin@sedgeandlantern.example']],
	endStaff: ({ helper }) => [once(), ['member', helper]],
	...moneyForms,
}

/** @throws when the action has no form here */
export function formOf(action: string, things: Things): Fields {
	const form = actionForms[action]
	if (form === undefined) throw new Error(`The action ${action} has no form here.`)
	return form(things)
}

/** The address of a page whose forms carry the action. */
export function pageWith(action: string, { client, proposal, season, agreement }: Things): string {
	const [route = '/'] = actionNamed(action).routes
	return route
		.replace('[client]', client)
		.replace('[proposal]', proposal)
		.replace('[season]', season)
		.replace('[agreement]', agreement ?? '')
}

/** What is asked of a container at the kerb, under the number of its boxes. */
const kerbBoxes = (number: number): Fields =>
	card
		.filter(([name]) => !['wallCm', 'headspaceCm', 'soilDepthCm', 'vesselKg'].includes(name))
		.map(([name, value]) => [`container.${number}.${name}`, value])

/** What is written down at the kerb, here without its photo. */
export const kerbForms: Readonly<Record<'a new place' | 'at a place', Form>> = {
	'a new place': () => [
		once(),
		['place', ''],
		['new.name', 'Garden gate'],
		['new.address', '9 Quay Row'],
		['new.taxPercent', '6.625'],
		['new.driveMinutes', '13'],
		['new.wallKind', 'brick'],
		['new.wallHex', '#8a4a3a'],
		['new.accessNote', 'Key under the third pot.'],
		...kerbBoxes(1),
		...over(kerbBoxes(2), [['container.2.shape', 'trough']]),
	],
	'at a place': ({ place }) => [once(), ['place', place], ...kerbBoxes(1)],
}

/** Forms that bring photos, here without any. */
export const visitForms: Readonly<Record<'wrong' | 'visit' | 'new visit', Form>> = {
	wrong: ({ place }) => [once(), ['place', place], ['words', 'A globe by the door is broken.']],
	visit: ({ place }) => [once(), ['do', 'record'], ...visitFields(place)],
	'new visit': ({ place, season }) => [once(), ['do', 'record'], ['season', season], ...visitFields(place)],
}

function visitFields(place: string): Fields {
	const yesterday = new Date(Date.now() - 86_400_000).toISOString().slice(0, 10)
	return [
		['day', yesterday],
		['kind', 'check'],
		['place', place],
		['came', 'Tobin'],
		['clientNote', 'All is well.'],
		['studioNote', 'Bring the long can.'],
	]
}

const studio: Fields = [
	['name', 'Elsewhere'],
	['timeZone', 'UTC'],
	['currency', 'USD'],
	['lengths', 'in'],
	['designer', 'Somebody'],
	['address', 'somebody@elsewhere.example'],
]

const others: Readonly<Record<string, Fields>> = {
	'/sign-in/ask': [
		['address', 'nobody@elsewhere.example'],
		['to', '/'],
	],
	'/sign-in/code': [['code', '12345678']],
	'/devices/end': [['session', 'f'.repeat(32)]],
	'/set-up/make': [['token', 'none'], once(), ...studio],
}

const report = { 'csp-report': { 'effective-directive': 'script-src', 'blocked-uri': 'inline' } }

const renewing = '/studio/agreements/renew/send'
const renewForm: Form = ({ agreement }) => [once(), ['signBy', '2031-01-01'], ['pick', agreement ?? v7()]]

const otherForm = (route: string, things: Things): Fields =>
	route === renewing ? renewForm(things) : (others[route] ?? [['words', 'none']])

/** One grey pixel, a PNG. */
const pixel = Buffer.from(
	'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAACXBIWXMAAAPoAAAD6AG1e1JrAAAADElEQVQImWNoaGgAAAMEAYEezv+mAAAAAElFTkSuQmCC',
	'base64',
)

/** A photo as the field of a page sends it. */
export function photo(bytes: Buffer = pixel): Body {
	const edge = 'doorsill-photo-3b9e'
	const head = `--${edge}\r\nContent-Disposition: form-data; name="photo"; filename="front.png"\r\nContent-Type: image/png\r\n\r\n`
	return {
		body: Buffer.concat([Buffer.from(head), bytes, Buffer.from(`\r\n--${edge}--\r\n`)]),
		headers: { 'content-type': `multipart/form-data; boundary=${edge}` },
	}
}

/** A picture of a page that was signed on paper, with the boxes beside it. */
export function scanned(fields: Readonly<Record<string, string>>, bytes: Buffer = pixel): Body {
	const edge = 'doorsill-scan-51c7'
	const boxes = Object.entries(fields).map(
		([name, value]) => `--${edge}\r\nContent-Disposition: form-data; name="${name}"\r\n\r\n${value}\r\n`,
	)
	const head = `--${edge}\r\nContent-Disposition: form-data; name="scan"; filename="page.png"\r\nContent-Type: image/png\r\n\r\n`
	return {
		body: Buffer.concat([Buffer.from(boxes.join('') + head), bytes, Buffer.from(`\r\n--${edge}--\r\n`)]),
		headers: { 'content-type': `multipart/form-data; boundary=${edge}` },
	}
}

const isAnswer = (name: string | undefined): name is keyof typeof answerForms =>
	name !== undefined && name in answerForms

const visitOf = (route: string) =>
	route.startsWith('/studio/visits/new/') ? visitForms['new visit'] : visitForms.visit

/** What is posted to a row's address; `draft` is that of a proposal, as the editor sends it. */
export function bodyFor(row: Pick<Row, 'route'>, things: Things, draft: unknown): Body {
	const agreement = /^\/agreement\/.*\/answer\/(\w+)$/.exec(row.route)?.[1] ?? ''
	return isAgreementForm(agreement) ? urlencoded(agreementForms[agreement](things)) : otherBody(row, things, draft)
}

function otherBody({ route }: Pick<Row, 'route'>, things: Things, draft: unknown): Body {
	const answer = /\/answer\/(approve|change|skip)$/.exec(route)?.[1]
	if (isAnswer(answer)) return urlencoded(answerForms[answer](things))
	if (route.endsWith('/wrong/send')) return multipart(visitForms.wrong(things))
	if (route.endsWith('/kerb/keep')) return multipart(kerbForms['a new place'](things))
	if (route.startsWith('/studio/visits/')) return multipart(visitOf(route)(things))
	if (route.endsWith('/renew/send'))
		return urlencoded([once(), ['signBy', '2031-01-01'], ['pick', things.agreement ?? v7()]])
	if (route.endsWith('/publish/send')) return urlencoded([once(), ['pick', `${things.proposal}.${things.version}`]])
	if (/\/(price|propose)$/.test(route)) return json({ draft })
	if (route.endsWith('/substitutes')) return json({ draft, material: things.material, container: null })
	if (route.endsWith('/grow')) return json({ draft, option: 'a', recipe: null })
	if (route.endsWith('/save')) return json({ version: things.version, draft })
	if (route === '/csp-report') return { ...json(report), headers: { 'content-type': 'application/csp-report' } }
	return route.endsWith('/photo') ? photo() : urlencoded(otherForm(route, things))
}
