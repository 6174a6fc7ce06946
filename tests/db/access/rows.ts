import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readLibrary } from '@/db/catalogue/library'
import { listMaterials, saveMaterial } from '@/db/catalogue/materials'
import { readStock } from '@/db/catalogue/read-stock'
import { saveRecipe } from '@/db/catalogue/recipes'
import { keepStock } from '@/db/catalogue/stock'
import { listSuppliers, saveSupplier } from '@/db/catalogue/suppliers'
import { mergeSiteColours, renameSiteColour } from '@/db/clients/change-colours'
import { eraseClient } from '@/db/clients/erase'
import { doors, readHome } from '@/db/clients/home'
import { listClients } from '@/db/clients/list-clients'
import { addAtKerb } from '@/db/clients/places/add-at-kerb'
import { clientPage } from '@/db/clients/read-clients'
import { saveClient } from '@/db/clients/save-client'
import { endContact, inviteContact } from '@/db/clients/save-contact'
import { saveContainer } from '@/db/clients/save-container'
import { addSiteColours, dropSiteColour, savePlace } from '@/db/clients/save-place'
import { keepVisit, startVisit } from '@/db/clients/visits/keep-visit'
import { photoFile } from '@/db/clients/visits/photos/photo-file'
import { readNewVisit, readVisit } from '@/db/clients/visits/read-visit'
import { readVisits, visitsAt } from '@/db/clients/visits/read-visits'
import { mayReport, reportWrong } from '@/db/clients/visits/report-wrong'
import { visitsOf } from '@/db/clients/visits/visits-of'
import { keepAttempt, readAttempt, sweepAttempts } from '@/db/house/attempts'
import { backUp, backUpDaily } from '@/db/house/backup'
import { emptyLog } from '@/db/house/empty-log'
import { exportRecord } from '@/db/house/export-record'
import { noteLapses } from '@/db/house/lapse'
import { remindDue } from '@/db/house/remind-due'
import { sweepOnce } from '@/db/house/sweep-once'
import { sweepPhotos } from '@/db/house/sweep-photos'
import { leaseMail, settleMail } from '@/db/outbox/lease'
import { addressee, mailedProposal } from '@/db/outbox/mail-facts'
import { mailedVisit } from '@/db/outbox/mailed-visit'
import { approve } from '@/db/proposals/answers/approve'
import { askForChange } from '@/db/proposals/answers/ask-for-change'
import { mayAnswer } from '@/db/proposals/answers/open'
import { skipSeason } from '@/db/proposals/answers/skip'
import { beginProposal } from '@/db/proposals/begin'
import { growOption, proposeOptions } from '@/db/proposals/desk/design-draft'
import { previewOffer, priceDraft } from '@/db/proposals/desk/price-draft'
import { readDesk } from '@/db/proposals/desk/read-desk'
import { readSources } from '@/db/proposals/desk/sources'
import { findStandIns } from '@/db/proposals/desk/stand-ins'
import { startDraft } from '@/db/proposals/desk/start'
import { readDraft, saveDraft } from '@/db/proposals/draft'
import { readCover } from '@/db/proposals/pictures/read-cover'
import { readPicture } from '@/db/proposals/pictures/read-picture'
import { publish } from '@/db/proposals/publish'
import { readOffer } from '@/db/proposals/read-offer'
import { remind } from '@/db/proposals/remind'
import { markSeen } from '@/db/proposals/seen'
import { steer } from '@/db/proposals/steer'
import { toInstall } from '@/db/proposals/to-install'
import { verify } from '@/db/record/verify'
import { changeAddress } from '@/db/sign-in/change-address'
import { endOwnSession, ownSessions, signOutEverywhere } from '@/db/sign-in/own-sessions'
import { applyCollection } from '@/db/studio/collection/apply'
import { changeCollection } from '@/db/studio/collection/change'
import { readCollection } from '@/db/studio/collection/read'
import { toApply } from '@/db/studio/collection/to-apply'
import { hireStaff } from '@/db/studio/hire'
import { rateEffects } from '@/db/studio/rate-effects'
import { seasonDrafts, seasonNames } from '@/db/studio/ready-drafts'
import { remindAll } from '@/db/studio/remind-all'
import { readRates, saveRates } from '@/db/studio/save-rates'
import { seasonPage } from '@/db/studio/season-page'
import { clientsWithout, listSeasons, planSeason } from '@/db/studio/seasons'
import { endStaff, listStaff } from '@/db/studio/staff'
import { readSettings, saveSettings, studioName, whoIs } from '@/db/studio/studio'
import { round } from '@/demo/cast/vessels'
import { defaultRates } from '@/lib/pricing/rates'
import { emptyDraft } from '@/lib/proposal/draft'
import { cents } from '@/lib/units/cents'
import { day, moment } from '@/lib/units/day'
import { hex } from '@/lib/units/hex'
import { hollyTraits } from '../catalogue/holly-traits'
import { agreementRows } from './agreement-rows'
import { moneyRows } from './money-rows'
import {
	approverAnswers,
	contactReads,
	contactSays,
	designerAndSystemRead,
	designerDoes,
	designerReads,
	everybodyDoes,
	everybodyReads,
	type House,
	type Row,
	row,
	staffDoes,
	staffReads,
	systemDoes,
	systemReads,
	type Things,
	to,
} from './outcomes'
import { signingRows } from './signing-rows'

const muchLater = moment(new Date('2027-09-30T12:00:00Z'))
const settings = { name: 'Sedge & Lantern', timeZone: 'America/New_York', currency: 'USD', lengths: 'cm' } as const
const clientFields = {
	kind: 'household',
	name: 'Another name',
	netDays: 30,
	exemptCertificate: null,
	exemptExpires: null,
	studioNote: '',
} as const
const placeFields = {
	name: 'Back door',
	address: '5 Chandlers Row',
	taxMilliPercent: 4000,
	driveMinutes: 7,
	zoneCents: null,
	wallKind: 'brick',
	wallHex: hex('#8b6353'),
	doorHex: null,
	accessNote: '',
} as const
const colour = { name: 'bell', hex: hex('#b08d4f'), side: 'outside' } as const
const materialFields = {
	name: 'Ilex, red',
	kind: 'fresh',
	piece: 'branch',
	role: 'thriller',
	unit: 'stem',
	piecesPerUnit: 1,
	hex: hex('#9c2b22'),
	isPoisonousToPeople: true,
	isPoisonousToPets: true,
	hasSmallParts: false,
} as const
const sold = { supplier: 'Ferrow Growers', size: 10, priceCents: 1900, freightPercent: 8 }
const spring = {
	quarter: 'spring',
	year: 2027,
	windowFrom: day('2027-04-12'),
	windowTo: day('2027-04-23'),
	answerBy: day('2027-03-19'),
} as const
const bare = { key: 'a', name: 'Bone', palette: [], pots: [], supplementCents: cents(0) }
const draft = { ...emptyDraft({ from: null, to: null, answerBy: null }), options: [bare] }

const answering = ({ proposal, revision }: Things, { once }: House) => ({
	proposal,
	revision,
	once: once(),
	browser: 'a test',
})
const steering = ({ proposal }: Things, { once }: House) =>
	({ proposal, step: 'withdraw', reason: '', once: once() }) as const

const keepingVisit = ({ place }: Things) => ({
	command: { do: 'record', day: day('2026-10-05') } as const,
	written: { kind: 'check', place, came: 'Tobin', clientNote: '', studioNote: '', out: [], tell: true } as const,
	photos: [],
})

const everyPot = { place: '', option: null, extras: [], leftOut: [], hour: 'day', measure: 'none' } as const

/** Function × person, over the things of the approver's and the looker's own client. */
export const rows: Readonly<Record<string, Row>> = {
	...agreementRows,
	...moneyRows,
	...signingRows,
	'catalogue/library readLibrary': row('studio', designerReads)((viewer) => readLibrary(viewer)),
	'catalogue/materials listMaterials': row('studio', designerReads)((viewer) => listMaterials(viewer)),
	'catalogue/materials saveMaterial': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => saveMaterial(viewer, null, { ...materialFields, ...hollyTraits }, sold, stamp())),
	'catalogue/read-stock readStock': row('studio', designerReads)((viewer, _, { stored }) => readStock(viewer, stored)),
	'catalogue/recipes saveRecipe': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) =>
		saveRecipe(viewer, null, { name: 'Red stems', quarter: 'winter', note: '', lines: [] }, stamp()),
	),
	'catalogue/stock keepStock': row(
		'client',
		designerDoes,
	)((viewer, { client }, { material, stamp }) =>
		keepStock(viewer, { material, client, quantity: 3, usesBefore: 1 }, stamp()),
	),
	'catalogue/suppliers listSuppliers': row('studio', designerReads)((viewer) => listSuppliers(viewer)),
	'catalogue/suppliers saveSupplier': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => saveSupplier(viewer, null, { name: 'Ferrow Growers', leadDays: 9, note: '' }, stamp())),
	'clients/change-colours mergeSiteColours': row(
		'client',
		designerDoes,
	)((viewer, { client, colour: of, otherColour: other }, { stamp }) =>
		mergeSiteColours(viewer, { client, colour: of, other }, stamp()),
	),
	'clients/change-colours renameSiteColour': row(
		'client',
		designerDoes,
	)((viewer, { client, colour: of }, { stamp }) =>
		renameSiteColour(viewer, { client, colour: of, name: 'old bell' }, stamp()),
	),
	'clients/erase eraseClient': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) => eraseClient(viewer, client, stamp())),
	'clients/home doors': row(
		'studio',
		to('none', 'none', 'value', 'value', 'value', 'none', 'none'),
	)((viewer) => doors(viewer)),
	'clients/home readHome': row(
		'client',
		to('none', 'none', 'value', 'value', 'none', 'none', 'none'),
	)((viewer, { client }, { stamp }) => readHome(viewer, client, stamp())),
	'clients/read-clients clientPage': row('client', designerReads)((viewer, { client }) => clientPage(viewer, client)),
	'clients/list-clients listClients': row('studio', designerReads)((viewer) => listClients(viewer)),
	'clients/save-client saveClient': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) => saveClient(viewer, client, clientFields, stamp())),
	'clients/save-contact endContact': row(
		'client',
		designerDoes,
	)((viewer, { client, contact }, { stamp }) => endContact(viewer, { client, contact }, stamp())),
	'clients/save-contact inviteContact': row(
		'client',
		designerDoes,
	)((viewer, { client }, { stamp }) =>
		inviteContact(
			viewer,
			{ client, name: 'Una Marrowby', address: 'una@marrowbybakery.example', may: 'look' },
			stamp(),
		),
	),
	'clients/places/add-at-kerb addAtKerb': row(
		'client',
		designerDoes,
	)((viewer, { client, place }, { stamp }) =>
		addAtKerb(
			viewer,
			{ client, place, containers: [round('By the till', '#2f3336').card], colours: [colour] },
			stamp(),
		),
	),
	'clients/save-container saveContainer': row(
		'client',
		designerDoes,
	)((viewer, { client, place, container }, { stamp }) =>
		saveContainer(viewer, { client, place, container }, round('By the till', '#2f3336').card, stamp()),
	),
	'clients/save-place addSiteColours': row(
		'client',
		designerDoes,
	)((viewer, { client, place }, { stamp }) => addSiteColours(viewer, { client, place }, [colour], stamp())),
	'clients/save-place dropSiteColour': row(
		'client',
		designerDoes,
	)((viewer, { client, colour: of }, { stamp }) => dropSiteColour(viewer, { client, colour: of }, stamp())),
	'clients/save-place savePlace': row(
		'client',
		designerDoes,
	)((viewer, { client, place }, { stamp }) => savePlace(viewer, { client, place }, placeFields, stamp())),
	'house/attempts keepAttempt': row(
		'studio',
		everybodyDoes,
	)((viewer, _, { once, stamp }) => keepAttempt(viewer, once(), { typed: {}, errors: {} }, stamp())),
	'house/attempts readAttempt': row(
		'client',
		to('none', 'none', 'value', 'none', 'none', 'none', 'none'),
	)((viewer, { attempt }) => readAttempt(viewer, attempt)),
	'house/attempts sweepAttempts': row(
		'studio',
		systemDoes,
	)((viewer, _, { stamp }) => sweepAttempts(viewer, stamp(muchLater))),
	'house/backup backUp': row('studio', systemReads)((viewer, _, { stamp }) => backUp(viewer, stamp())),
	'house/backup backUpDaily': row('studio', systemReads)((viewer, _, { stamp }) => backUpDaily(viewer, stamp())),
	'house/empty-log emptyLog': row('studio', systemReads)((viewer) => emptyLog(viewer)),
	'house/export-record exportRecord': row(
		'studio',
		systemReads,
	)((viewer, _, { stamp }) => exportRecord(viewer, join(tmpdir(), `doorsill-export-${stamp().id()}`))),
	'house/lapse noteLapses': row('studio', systemReads)((viewer, _, { stamp }) => noteLapses(viewer, stamp(muchLater))),
	'house/remind-due remindDue': row('studio', systemReads)((viewer, _, { stamp }) => remindDue(viewer, stamp())),
	'house/sweep-once sweepOnce': row(
		'studio',
		systemDoes,
	)((viewer, _, { stamp }) => sweepOnce(viewer, stamp(muchLater))),
	'outbox/lease leaseMail': row('studio', systemReads)((viewer, _, { stamp }) => leaseMail(viewer, 5, stamp())),
	'outbox/lease settleMail': row(
		'studio',
		systemDoes,
	)((viewer, _, { mail, stamp }) => settleMail(viewer, { id: mail, tries: 1 }, 'sent', stamp())),
	'outbox/mail-facts addressee': row('client', systemReads)((viewer, { person }) => addressee(viewer, person)),
	'outbox/mail-facts mailedProposal': row(
		'client',
		systemReads,
	)((viewer, { proposal, person }, { stamp }) => mailedProposal(viewer, { proposal, number: 1, person }, stamp())),
	'proposals/answers/approve approve': row(
		'client',
		approverAnswers,
	)((viewer, things, house) =>
		approve(
			viewer,
			{ ...answering(things, house), option: 'a', places: {}, extras: [], leftOut: [], purchaseOrder: '' },
			house.stamp(),
		),
	),
	'proposals/answers/ask-for-change askForChange': row(
		'client',
		approverAnswers,
	)((viewer, things, house) =>
		askForChange(viewer, { ...answering(things, house), notes: [{ part: 'whole', words: 'Taller.' }] }, house.stamp()),
	),
	'proposals/answers/open mayAnswer': row(
		'client',
		approverAnswers,
	)((viewer, { proposal }, { stamp }) => mayAnswer(viewer, proposal, stamp())),
	'proposals/answers/skip skipSeason': row(
		'client',
		approverAnswers,
	)((viewer, things, house) => skipSeason(viewer, { ...answering(things, house), why: '' }, house.stamp())),
	'proposals/begin beginProposal': row(
		'client',
		designerDoes,
	)((viewer, { client }, { season, stamp }) => beginProposal(viewer, { client, season }, stamp())),
	'proposals/draft readDraft': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => readDraft(viewer, proposal, stamp())),
	'proposals/draft saveDraft': row(
		'client',
		designerDoes,
	)((viewer, { proposal, version }, { stamp }) => saveDraft(viewer, { proposal, version, draft }, stamp())),
	'proposals/desk/design-draft growOption': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => growOption(viewer, { proposal, draft, option: 'a', recipe: null }, stamp())),
	'proposals/desk/design-draft proposeOptions': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => proposeOptions(viewer, { proposal, draft }, stamp())),
	'proposals/desk/price-draft previewOffer': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => previewOffer(viewer, { proposal, draft }, stamp())),
	'proposals/desk/price-draft priceDraft': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => priceDraft(viewer, { proposal, draft }, stamp())),
	'proposals/publish publish': row(
		'client',
		designerDoes,
	)((viewer, { proposal, version }, { once, stamp }) => publish(viewer, { proposal, version, once: once() }, stamp())),
	'proposals/desk/read-desk readDesk': row(
		'client',
		designerReads,
	)((viewer, { proposal }, { stamp }) => readDesk(viewer, proposal, stamp())),
	'proposals/desk/stand-ins findStandIns': row(
		'client',
		designerReads,
	)((viewer, { proposal, container }, { material, stamp }) =>
		findStandIns(viewer, { proposal, draft, material, container }, stamp()),
	),
	'proposals/desk/sources readSources': row(
		'client',
		designerReads,
	)((viewer, { client }, { season }) => readSources(viewer, { client, season })),
	'proposals/desk/start startDraft': row(
		'client',
		designerDoes,
	)((viewer, { client, proposal }, { unbegun, stamp }) =>
		startDraft(viewer, { client, season: unbegun, from: { is: 'earlier', proposal } }, stamp()),
	),
	'proposals/read-offer readOffer': row(
		'client',
		to('value', 'none', 'value', 'value', 'none', 'none', 'value'),
	)((viewer, { proposal }, { stamp }) => readOffer(viewer, proposal, stamp())),
	'proposals/pictures/read-cover readCover': row(
		'studio',
		to('value', 'value', 'value', 'value', 'value', 'value', 'value'),
	)((viewer, _, { cover }) => readCover(viewer, cover)),
	'proposals/pictures/read-picture readPicture': row(
		'client',
		to('value', 'none', 'value', 'value', 'none', 'none', 'value'),
	)((viewer, { proposal }, { stamp }) =>
		readPicture(viewer, { proposal, revision: '', shown: everyPot, isOfWhatStands: true }, stamp()),
	),
	'proposals/remind remind': row(
		'client',
		designerDoes,
	)((viewer, { proposal }, { once, stamp }) => remind(viewer, { proposal, again: true, once: once() }, stamp())),
	'proposals/seen markSeen': row(
		'client',
		to('none', 'none', 'done', 'done', 'none', 'none', 'none'),
	)((viewer, { proposal }, { stamp }) => markSeen(viewer, proposal, stamp())),
	'proposals/steer steer': row(
		'client',
		designerDoes,
	)((viewer, things, house) => steer(viewer, steering(things, house), house.stamp())),
	'proposals/to-install toInstall': row(
		'studio',
		to('value', 'value', 'none', 'none', 'none', 'none', 'none'),
	)((viewer) => toInstall(viewer)),
	'record/verify verify': row('studio', designerAndSystemRead)((viewer) => verify(viewer)),
	'sign-in/change-address changeAddress': row(
		'client',
		designerDoes,
	)((viewer, { client, contact }, { stamp }) =>
		changeAddress(viewer, { client, contact, address: 'moved@elsewhere.example' }, stamp()),
	),
	'sign-in/own-sessions ownSessions': row(
		'studio',
		to('value', 'value', 'value', 'value', 'value', 'none', 'none'),
	)((viewer) => ownSessions(viewer, undefined, new Date())),
	// None of the cast is signed in: a handle that is nobody's. Of one's own: tests/db/sign-in.
	'sign-in/own-sessions endOwnSession': row(
		'studio',
		to('hidden', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden', 'hidden'),
	)((viewer) => endOwnSession(viewer, 'f'.repeat(32))),
	'sign-in/own-sessions signOutEverywhere': row(
		'studio',
		to('value', 'value', 'value', 'value', 'value', 'hidden', 'hidden'),
	)((viewer, _, { stamp }) => signOutEverywhere(viewer, stamp())),
	'studio/collection/apply applyCollection': row(
		'studio',
		designerDoes,
	)((viewer, { client }, { season, stamp }) =>
		applyCollection(viewer, { season, clients: [client], options: 1 }, stamp()),
	),
	'studio/collection/change changeCollection': row(
		'studio',
		designerDoes,
	)((viewer, _, { season, stamp }) =>
		changeCollection(
			viewer,
			{ season, version: 7, change: { is: 'words', title: 'Winter at the door', letter: '' } },
			stamp(),
		),
	),
	'studio/collection/read readCollection': row(
		'studio',
		designerReads,
	)((viewer, _, { season }) => readCollection(viewer, season)),
	'studio/collection/to-apply toApply': row(
		'studio',
		designerReads,
	)((viewer, _, { season, stamp }) => toApply(viewer, season, stamp())),
	'studio/ready-drafts seasonDrafts': row(
		'studio',
		designerReads,
	)((viewer, _, { season, stamp }) => seasonDrafts(viewer, season, stamp())),
	'studio/ready-drafts seasonNames': row(
		'studio',
		designerReads,
	)((viewer, _, { season }) => seasonNames(viewer, season)),
	'studio/remind-all remindAll': row(
		'studio',
		designerDoes,
	)((viewer, _, { season, once, stamp }) => remindAll(viewer, { season, again: true, once: once() }, stamp())),
	'studio/season-page seasonPage': row(
		'studio',
		designerAndSystemRead,
	)((viewer, _, { season, stamp }) => seasonPage(viewer, { season, page: 1 }, stamp())),
	'studio/seasons clientsWithout': row(
		'studio',
		designerAndSystemRead,
	)((viewer, _, { season }) => clientsWithout(viewer, season)),
	'studio/seasons listSeasons': row('studio', designerAndSystemRead)((viewer) => listSeasons(viewer)),
	'studio/seasons planSeason': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => planSeason(viewer, spring, stamp())),
	'studio/hire hireStaff': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) =>
		hireStaff(viewer, { name: 'Perrin Ashgrove', address: 'perrin@sedgeandlantern.example', role: 'helper' }, stamp()),
	),
	'studio/save-rates readRates': row('studio', designerReads)((viewer) => readRates(viewer)),
	'studio/save-rates saveRates': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) =>
		saveRates(viewer, { version: 1, rates: { ...defaultRates, depositPercent: 40 } }, stamp()),
	),
	'studio/rate-effects rateEffects': row(
		'studio',
		designerReads,
	)((viewer, _, { stamp }) => rateEffects(viewer, defaultRates, stamp())),
	'studio/staff listStaff': row('studio', designerReads)((viewer) => listStaff(viewer)),
	'studio/staff endStaff': row(
		'studio',
		designerDoes,
	)((viewer, _, { helper, stamp }) => endStaff(viewer, helper, stamp())),
	'studio/studio readSettings': row('studio', designerReads)((viewer) => readSettings(viewer)),
	'studio/studio saveSettings': row(
		'studio',
		designerDoes,
	)((viewer, _, { stamp }) => saveSettings(viewer, settings, stamp())),
	'studio/studio studioName': row('studio', everybodyReads)((viewer) => studioName(viewer)),
	'studio/studio whoIs': row(
		'studio',
		to('value', 'value', 'value', 'value', 'value', 'none', 'none'),
	)((viewer) => whoIs(viewer)),
	'house/sweep-photos sweepPhotos': row(
		'studio',
		to('none', 'none', 'none', 'none', 'none', 'none', 'none'),
	)((viewer) => sweepPhotos(viewer)),
	'outbox/mailed-visit mailedVisit': row(
		'client',
		systemReads,
	)((viewer, { visit, person }) => mailedVisit(viewer, { visit, person })),
	'clients/visits/keep-visit keepVisit': row(
		'client',
		staffDoes,
	)((viewer, things, { stamp }) => keepVisit(viewer, things.visit, keepingVisit(things), stamp())),
	'clients/visits/keep-visit startVisit': row(
		'client',
		staffDoes,
	)((viewer, things, { season, stamp }) =>
		startVisit(viewer, { client: things.client, season }, keepingVisit(things), stamp()),
	),
	'clients/visits/photos/photo-file photoFile': row(
		'client',
		to('value', 'value', 'value', 'value', 'none', 'none', 'none'),
	)((viewer, { photo }) => photoFile(viewer, photo, 'small')),
	'clients/visits/read-visit readNewVisit': row(
		'client',
		staffReads,
	)((viewer, { client }, { stamp }) => readNewVisit(viewer, client, stamp())),
	'clients/visits/read-visit readVisit': row(
		'client',
		staffReads,
	)((viewer, { visit }, { stamp }) => readVisit(viewer, visit, stamp())),
	'clients/visits/read-visits readVisits': row(
		'studio',
		staffReads,
	)((viewer, _, { stamp }) => readVisits(viewer, stamp())),
	'clients/visits/read-visits visitsAt': row('client', staffReads)((viewer, { client }) => visitsAt(viewer, client)),
	'clients/visits/report-wrong mayReport': row(
		'client',
		contactSays,
	)((viewer, { client }) => mayReport(viewer, client)),
	'clients/visits/report-wrong reportWrong': row(
		'client',
		contactSays,
	)((viewer, { client, place }, { stamp }) =>
		reportWrong(viewer, client, { words: 'A globe broke.', place, photos: [] }, stamp()),
	),
	'clients/visits/visits-of visitsOf': row(
		'client',
		contactReads,
	)((viewer, { client }, { stamp }) => visitsOf(viewer, client, stamp())),
}
