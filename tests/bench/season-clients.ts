import { join } from 'node:path'
import Database from 'better-sqlite3'
import type { SeasonId } from '@/lib/units/id'

const states = ['waiting for an answer', 'drafting', 'approved', 'change asked for', 'installed', 'skipped'] as const

/** Clients with a place, a container and a proposal each, until the season has `count` proposals. */
export function seasonOf(folder: string, season: SeasonId, count: number, answerBy: string): void {
	const db = new Database(join(folder, 'studio.db'))
	const client = db.prepare("INSERT INTO client VALUES (?, ?, ?, 30, NULL, NULL, '', 'now', NULL)")
	const place = db.prepare(
		"INSERT INTO place (id, client_id, name, address, position, tax_milli_percent, drive_minutes, wall_kind, wall_hex, access_note) VALUES (?, ?, 'Front', '1 Row', 1, 0, 10, 'brick', '#8b6353', '')",
	)
	const proposal = db.prepare(
		`INSERT INTO proposal (id, client_id, season_id, state, revision_number, revision_hash, answer_by, published_at, palette, palette_count, palette_hexes, value_cents, margin_tenths, created_at)
		VALUES (?, ?, ?, ?, ?, ?, ?, ?, 'Copper and plum', 1, '#b5653a #6d3049', ?, 500, 'now')`,
	)
	const add = (n: number) => {
		const state = states[n % states.length] ?? 'drafting'
		const isOut = state !== 'drafting'
		client.run(`client ${n}`, n % 3 === 0 ? 'business' : 'household', `Client ${String(n).padStart(5, '0')}`)
		place.run(`place ${n}`, `client ${n}`)
		const out = isOut ? [1, `hash ${n}`, answerBy, `${answerBy}T12:00:00.000Z`] : [0, null, null, null]
		proposal.run(`proposal ${n}`, `client ${n}`, season, state, ...out, isOut ? 10_000 + n : null)
	}
	const there = db.prepare('SELECT count(*) FROM proposal WHERE season_id = ?').pluck().get(season)
	db.transaction(() => Array.from({ length: count - Number(there) }, (_, n) => add(n)))()
	db.close()
}
