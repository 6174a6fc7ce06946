import { rateChoices, rateFields, rateTicks } from '@/lib/forms/rates/rate-table'
import { type Hostile, type Kind, triedIn } from '../../look/hostile'
import { agreementForms } from './agreement-forms'
import { moneyForms } from './money-forms'

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
const lengthsOf = (names: readonly string[]): Record<string, Kind> =>
	Object.fromEntries(names.map((name) => [name, 'length']))

const emptyTraits = [
	'secondHex',
	'lengthCm',
	'acrossCm',
	'zone',
	'spacingCm',
	'rootBallLitres',
	'kgEach',
	'watts',
	'mostEndToEnd',
	'regulated',
] as const

const traits: Readonly<Record<string, Kind>> = {
	form: 'choice',
	secondHex: 'hex',
	lengthCm: 'length',
	acrossCm: 'length',
	hadFrom: 'choice',
	hadTo: 'choice',
	lastsFrom: 'choice',
	lastsTo: 'choice',
	zone: 'choice',
	needs: 'choice',
	spacingCm: 'length',
	rootBallLitres: 'number',
	kgEach: 'number',
	watts: 'number',
	mostEndToEnd: 'number',
	regulated: 'words',
}

/** Every field of every form of the studio, by what it is for. */
export const forms: Readonly<Record<string, Form>> = {
	plan: {
		fields: { quarter: 'choice', year: 'number', answerBy: 'day', windowFrom: 'day', windowTo: 'day' },
		hidden: [],
	},
	begin: { fields: { client: 'id', season: 'id' }, hidden: ['client', 'season'] },
	saveCollectionWords: {
		fields: { season: 'id', version: 'number', title: 'words', letter: 'lines' },
		hidden: ['season', 'version'],
	},
	saveDesign: {
		fields: {
			...{ season: 'id', version: 'number', design: 'choice', does: 'choice' },
			...{ name: 'words', colour: 'words', hex: 'hex', pot: 'choice', box: 'choice', bowl: 'choice' },
		},
		hidden: ['season', 'version', 'design', 'does'],
	},
	saveCollectionExtra: {
		fields: {
			...{ season: 'id', version: 'number', extra: 'choice', does: 'choice', name: 'words', words: 'words' },
			...{ minutes: 'number', material: 'choice', count: 'number', holding: 'choice' },
		},
		hidden: ['season', 'version', 'extra', 'does'],
	},
	applyToClients: { fields: { season: 'id', options: 'choice', client: 'id' }, hidden: ['season', 'client'] },
	startFrom: {
		fields: { season: 'id', client: 'id', from: 'choice', which: 'choice' },
		hidden: ['season', 'client', 'from'],
	},
	remind: {
		fields: { proposal: 'id', season: 'id', page: 'number', ask: 'words', again: 'choice' },
		hidden: ['proposal', 'season', 'page', 'ask', 'again'],
	},
	remindAll: { fields: { season: 'id', again: 'tick' }, hidden: ['season', 'again'] },
	// A household has no purchase order: its box is there for businesses alone.
	takeApproval: {
		fields: { proposal: 'id', revision: 'hash', option: 'choice', said: 'words', purchaseOrder: 'words' },
		hidden: ['proposal', 'revision', 'option', 'purchaseOrder'],
	},
	takeChange: {
		fields: { proposal: 'id', revision: 'hash', said: 'words', about: 'choice', note: 'lines' },
		hidden: ['proposal', 'revision', 'about'],
	},
	takeSkip: {
		fields: { proposal: 'id', revision: 'hash', said: 'words', why: 'lines' },
		hidden: ['proposal', 'revision'],
	},
	publish: { fields: { proposal: 'id', version: 'number' }, hidden: ['proposal', 'version'] },
	// What remains due is seen where an approval is cancelled; the step that is tried here takes back what waits.
	steer: {
		fields: { proposal: 'id', step: 'choice', reason: 'lines', remains: 'money' },
		empty: ['remains'],
		hidden: ['proposal', 'step', 'remains'],
	},
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
	changeAddress: {
		fields: { client: 'id', contact: 'id', address: 'address' },
		hidden: ['client', 'contact'],
	},
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
			hardinessZone: 'choice',
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
			...lengthsOf([...measures, 'sillToGlassCm', 'walkLeftCm']),
			vesselKg: 'number',
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
	// Before a material names a supplier with the same words: a name is taken once.
	saveSupplier: {
		fields: { supplier: 'id', name: 'words', leadDays: 'number', note: 'lines' },
		hidden: ['supplier'],
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
			...traits,
			supplier: 'words',
			size: 'number',
			price: 'money',
			freightPercent: 'number',
		},
		empty: [...emptyTraits],
		hidden: ['material'],
	},
	addColours: {
		fields: { client: 'id', place: 'id', name: 'words', hex: 'hex', side: 'choice', spotX: 'number', spotY: 'number' },
		hidden: ['client', 'place', 'name', 'hex', 'side', 'spotX', 'spotY'],
	},
	renameColour: { fields: { client: 'id', colour: 'id', name: 'words' }, hidden: ['client', 'colour'] },
	mergeColours: { fields: { client: 'id', colour: 'id', other: 'choice' }, hidden: ['client', 'colour'] },
	dropColour: { fields: { client: 'id', colour: 'id' }, hidden: ['client', 'colour'] },
	keepStock: {
		fields: { material: 'id', client: 'choice', quantity: 'number', usesBefore: 'number' },
		hidden: ['material'],
	},
	saveRecipe: {
		fields: {
			...{ recipe: 'id', name: 'words', quarter: 'choice', note: 'lines' },
			...{ at: 'number', material: 'choice', role: 'choice', holding: 'choice', way: 'choice' },
			...{ count: 'number', holds: 'choice', remove: 'tick' },
		},
		empty: ['at'],
		hidden: ['recipe'],
	},
	saveRates: {
		fields: {
			...{ version: 'number', step: 'choice' },
			...Object.fromEntries(rateFields.map(({ at, is }) => [at, is === 'money' ? 'money' : 'number'] as const)),
			...Object.fromEntries(rateChoices.map(({ at }) => [at, 'choice'] as const)),
			...Object.fromEntries(rateTicks.map(({ at }) => [at, 'tick'] as const)),
		},
		hidden: ['version', 'step'],
	},
	...agreementForms,
	hire: { fields: { helper: 'words', address: 'address' }, hidden: [] },
	endStaff: { fields: { member: 'id' }, hidden: ['member'] },
	...moneyForms,
	saveSettings: { fields: { name: 'words', timeZone: 'choice', currency: 'choice', lengths: 'choice' }, hidden: [] },
}

/** Every field of them by itself. */
export const cases = Object.entries(forms).flatMap(([form, { fields }]) =>
	Object.entries(fields).map(([field, kind]) => ({ form, field, kind })),
)

/** What is tried in a field. */
export const valuesFor = ({ form, field, kind }: (typeof cases)[number]): readonly Hostile[] =>
	triedIn(kind, forms[form]?.empty?.includes(field))
