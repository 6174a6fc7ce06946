import { describe, expect, test } from 'vitest'
import { connect, databaseFile } from '@/db/open'
import { studio } from '../stage/studio'

const of = studio()

type Case = readonly [name: string, sql: string, refused: string]

/** Each is tried on one row of the cast: all else in it is as the house made it. */
const cases: Readonly<Record<string, readonly Case[]>> = {
	proposals: [
		[
			'out, without a revision',
			"UPDATE proposal SET revision_hash = NULL WHERE state = 'skipped'",
			'proposal_published',
		],
		[
			'a revision before the first',
			"UPDATE proposal SET revision_hash = 'f' WHERE revision_number = 0",
			'proposal_published',
		],
		[
			'approved before it was out',
			"UPDATE proposal SET state = 'approved' WHERE revision_number = 0",
			'proposal_unpublished',
		],
		[
			'lapsed: that follows from the date',
			"UPDATE proposal SET state = 'lapsed' WHERE revision_number = 1",
			'proposal_state',
		],
		[
			'two for one client and season',
			'UPDATE proposal SET season_id = (SELECT max(id) FROM season)',
			'proposal.client_id, proposal.season_id',
		],
		['of no client', "UPDATE proposal SET client_id = 'nobody' WHERE rowid = 1", 'FOREIGN KEY'],
		['a draft before its first version', 'UPDATE draft SET version = 0', 'draft_version'],
		[
			'a draft of no proposal',
			"INSERT INTO draft SELECT 'none', version, document, updated_at, updated_by FROM draft LIMIT 1",
			'FOREIGN KEY',
		],
	],
	revisions: [
		[
			'number 0',
			"INSERT INTO revision SELECT 'new', proposal_id, 0, 'hash', offer_hash, costing_hash, rates_version, answer_by, published_at, published_by FROM revision LIMIT 1",
			'revision_from_one',
		],
		[
			'a number twice',
			"INSERT INTO revision SELECT 'new', proposal_id, number, 'hash', offer_hash, costing_hash, rates_version, answer_by, published_at, published_by FROM revision LIMIT 1",
			'revision: evidence is never altered',
		],
		[
			'at rates that never were',
			"INSERT INTO revision SELECT 'new', proposal_id, 9, 'hash', offer_hash, costing_hash, 77, answer_by, published_at, published_by FROM revision LIMIT 1",
			'FOREIGN KEY',
		],
	],
	answers: [
		[
			'a second one to a revision',
			"INSERT INTO answer SELECT 'new', '2026-9999', revision_id, revision_hash, kind, option, extras, left_out, total_cents, words_hash, by, word, at, places FROM answer LIMIT 1",
			'answer: evidence is never altered',
		],
		...[
			['an approval of no palette', "'approval', NULL, '[]', '[]', 48000", 'answer_approval'],
			['an approval of no total', "'approval', 'a', '[]', '[]', NULL", 'answer_approval'],
			['a skip with a palette and a total', "'skip', 'a', '[]', '[]', 48000", 'answer_approval'],
			['a maybe', "'maybe', NULL, '[]', '[]', NULL", 'answer_kind'],
		].map(
			([name = '', values = '', refused = '']): Case => [
				name,
				`INSERT INTO answer SELECT 'new', '2026-9999', (SELECT id FROM revision WHERE id NOT IN (SELECT revision_id FROM answer) LIMIT 1), revision_hash, ${values}, words_hash, by, word, at, places FROM answer LIMIT 1`,
				refused,
			],
		),
		[
			'to no revision',
			"INSERT INTO answer SELECT 'new', '2026-9999', 'none', revision_hash, kind, option, extras, left_out, total_cents, words_hash, by, word, at, places FROM answer LIMIT 1",
			'FOREIGN KEY',
		],
	],
	'the record': [
		[
			'words with a salt of 15 bytes',
			"INSERT INTO sealed_text VALUES ('h', NULL, zeroblob(15), '{}')",
			'sealed_text_salt',
		],
		[
			'a salt that is text',
			"INSERT INTO sealed_text VALUES ('h', NULL, 'sixteen letters.', '{}')",
			'cannot store TEXT value in BLOB column',
		],
		['an erasure of nobody', "INSERT INTO erasure VALUES ('e', 'nobody', 'now', 'd')", 'FOREIGN KEY'],
	],
	'what is bought': [
		['a negative price', 'UPDATE pack SET price_cents = -1', 'pack_price'],
		['a price with half a cent', 'UPDATE pack SET price_cents = 1250.5', 'cannot store REAL value in INTEGER column'],
		['a price in words', "UPDATE pack SET price_cents = 'free'", 'cannot store TEXT value in INTEGER column'],
		['a pack of nothing', 'UPDATE pack SET size = 0', 'pack_size'],
		['freight of 101 per cent', 'UPDATE pack SET freight_percent = 101', 'pack_freight'],
		['sold by nobody', "UPDATE pack SET supplier_id = 'none'", 'FOREIGN KEY'],
		['two materials of one name', 'UPDATE material SET name = (SELECT min(name) FROM material)', 'material.name'],
		['a material in no unit', "UPDATE material SET unit = 'armful'", 'material_unit'],
		['a unit of no pieces', 'UPDATE material SET pieces_per_unit = 0', 'material_pieces'],
		['two suppliers of one name', 'UPDATE supplier SET name = (SELECT min(name) FROM supplier)', 'supplier.name'],
		['a supplier who takes longer than a year', 'UPDATE supplier SET lead_days = 366', 'supplier_lead'],
		['less than nothing in storage', 'UPDATE stock SET quantity = -0.5', 'stock_quantity'],
		[
			'the studio’s own counted twice',
			"INSERT INTO stock SELECT 'new', material_id, NULL, 4, 1 FROM stock WHERE client_id IS NULL LIMIT 1",
			'stock.material_id',
		],
		[
			'a client’s own counted twice',
			"INSERT INTO stock SELECT 'new', material_id, client_id, 4, 1 FROM stock WHERE client_id IS NOT NULL LIMIT 1",
			'stock.material_id, stock.client_id',
		],
		[
			'two lines of a recipe in one place',
			'UPDATE recipe_line SET position = 0',
			'recipe_line.recipe_id, recipe_line.position',
		],
		['a recipe line of nothing', 'UPDATE recipe_line SET count = 0', 'recipe_line_count'],
		['a recipe for a fifth season', "UPDATE recipe SET quarter = 'monsoon'", 'recipe_quarter'],
	],
	clients: [
		['an exemption that never ends', "UPDATE client SET exempt_certificate = 'EX-1'", 'client_exempt'],
		[
			'an end of no exemption',
			"UPDATE client SET exempt_expires = '2027-01-31', exempt_certificate = NULL",
			'client_exempt',
		],
		['20 days to pay', 'UPDATE client SET net_days = 20', 'client_net_days'],
		['neither business nor household', "UPDATE client SET kind = 'museum'", 'client_kind'],
		['gone while its places stand', 'DELETE FROM client', 'FOREIGN KEY'],
		['a contact who may sign', "UPDATE contact SET may = 'sign'", 'contact_may'],
		[
			'a contact twice at one door',
			"INSERT INTO contact SELECT 'new', client_id, person_id, 'look', since, NULL, 0 FROM contact LIMIT 1",
			'contact.client_id, contact.person_id',
		],
		['two people of one address', 'UPDATE person SET email = (SELECT min(email) FROM person)', 'person.email'],
		['two people of one handle', 'UPDATE person SET handle = (SELECT min(handle) FROM person)', 'person.handle'],
		['a member of staff who is an owner', "UPDATE staff SET role = 'owner'", 'staff_role'],
	],
	'places and containers': [
		['a tax below nothing', 'UPDATE place SET tax_milli_percent = -1', 'place_tax'],
		['a tax above 30 per cent', 'UPDATE place SET tax_milli_percent = 30001', 'place_tax'],
		['a drive of eleven hours', 'UPDATE place SET drive_minutes = 660', 'place_drive'],
		['a zone that pays the client', 'UPDATE place SET zone_cents = -100', 'place_zone'],
		['a wall of straw', "UPDATE place SET wall_kind = 'straw'", 'place_wall'],
		['a colour between the sides', "UPDATE site_colour SET side = 'between'", 'site_colour_side'],
		['walls thicker than the pot', 'UPDATE container SET wall_cm = bottom_cm / 2', 'container_wall_thickness'],
		['walls of less than nothing', 'UPDATE container SET wall_cm = -0.1', 'container_wall_thickness'],
		[
			'no room between floor and rim',
			'UPDATE container SET headspace_cm = height_cm - wall_cm WHERE height_cm < 50',
			'container_floor',
		],
		['a round pot with two sides', "UPDATE container SET top_depth_cm = 40 WHERE shape = 'round'", 'container_depths'],
		['a trough with one side', "UPDATE container SET top_depth_cm = NULL WHERE shape = 'trough'", 'container_depths'],
		['a thimble', 'UPDATE container SET top_cm = 4.9', 'container_top'],
		['a tower', 'UPDATE container SET height_cm = 501', 'container_height'],
		['watered by the rain', "UPDATE container SET waterer = 'rain'", 'container_waterer'],
	],
	'the house': [
		['an answer due after the first day', "UPDATE season SET answer_by = '2028-01-01'", 'season_dates'],
		['a window that ends before it begins', "UPDATE season SET window_to = '2026-01-01'", 'season_dates'],
		[
			'a winter twice',
			"INSERT INTO season SELECT 'new', quarter, year, window_from, window_to, answer_by FROM season LIMIT 1",
			'season.quarter, season.year',
		],
		[
			'a second studio in the file',
			'INSERT INTO studio SELECT 2, name, time_zone, currency, lengths, created_at, pay_words FROM studio',
			'studio_one',
		],
		['lengths in cubits', "UPDATE studio SET lengths = 'cubit'", 'studio_lengths'],
		[
			'a mail both sent and dropped',
			'UPDATE outbox SET dropped_at = sent_at WHERE sent_at IS NOT NULL',
			'outbox_one_end',
		],
		['a mail that says nothing we say', "UPDATE outbox SET message = 'newsletter'", 'outbox_message'],
		['a mail to nobody known', "UPDATE outbox SET person_id = 'none'", 'FOREIGN KEY'],
		['a session of nobody known', "INSERT INTO session VALUES ('h', 'none', 1, 'now', '', NULL)", 'FOREIGN KEY'],
	],
}

describe.each(Object.entries(cases))('%s', (_, rows) => {
	test.each(rows)('%s', (_name, sql, refused) => {
		const sqlite = connect(databaseFile(of.folder()))
		expect(() => sqlite.exec(sql)).toThrow(refused)
		sqlite.close()
	})
})
