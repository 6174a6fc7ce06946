import { spawn } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { closeDatabase, openDatabase } from '@/db/open'
import { verify } from '@/db/record/verify'
import { viewerOf } from '@/db/viewer'
import { copyOf, counts, seededStudio } from './studio'

const rounds = Number(process.env.FAULT_ROUNDS ?? 6)

/** Lets the busy process run for a while and kills it in the middle. @returns the last line of the record that it said was kept */
function killAfter(folder: string, ms: number): Promise<number> {
	return new Promise((resolve) => {
		let acknowledged = 0
		const child = spawn(process.execPath, ['--import', 'tsx', join('tests', 'faults', 'busy.ts'), folder], {
			stdio: ['ignore', 'pipe', 'inherit'],
		})
		child.stdout.on('data', (chunk: Buffer) => {
			if (acknowledged === 0) setTimeout(() => child.kill('SIGKILL'), ms)
			const lines = chunk.toString().trim().split('\n')
			acknowledged = Math.max(acknowledged, ...lines.map(Number))
		})
		child.once('close', () => resolve(acknowledged))
	})
}

test(`killed in the middle of its work ${rounds} times, it loses nothing that it had acknowledged, and nothing is half done`, async () => {
	const studio = await seededStudio()
	writeFileSync(join(studio.folder, 'cast.json'), JSON.stringify(studio.cast))
	const folder = copyOf(studio)
	const before = counts(folder)
	for (let round = 0; round < rounds; round += 1) {
		const acknowledged = await killAfter(folder, 40 + ((round * 37) % 160))
		const after = counts(folder)
		expect(after.integrity).toBe('ok')
		expect(acknowledged).toBeGreaterThan(before.lastSeq)
		expect(after.lastSeq).toBeGreaterThanOrEqual(acknowledged)
		expect(after.published).toBe(after.revisions)
		expect(after.approved).toBe(after.approvals)
		expect(after.receipts).toBe(after.dueReceipts)
		expect(after.orphans).toBe(0)
		openDatabase(folder)
		const whole = await verify(await viewerOf('system'))
		closeDatabase()
		expect(whole?.broken).toBeNull()
	}
})
