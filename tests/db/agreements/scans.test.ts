import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { eraseClient } from '@/db/clients/erase'
import { backUp } from '@/db/house/backup'
import { must } from '@/demo/play/must'
import { studio } from '../stage/studio'
import { agreementsOf } from './steps'

const of = studio()
const { signedOnPaper } = agreementsOf(of)

test('the picture of a paper signature goes into the backup, and goes from both with an erasure', async () => {
	await signedOnPaper('vet')
	const [kept, copies] = [join(of.folder(), 'scans'), join(of.folder(), 'backup', 'scans')]
	const [name = ''] = readdirSync(kept)
	expect(existsSync(copies)).toBe(false)
	await backUp(await of.as('system'), of.stamp())
	expect(readFileSync(join(copies, name))).toEqual(readFileSync(join(kept, name)))
	must('erase', await eraseClient(await of.as('designer'), of.cast().clients.vet.id, of.stamp()))
	expect([readdirSync(kept), readdirSync(copies)]).toEqual([[], []])
})
