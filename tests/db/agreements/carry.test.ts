import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { carryFiles } from '@/db/agreements/papers/carry'
import { emptyStudio } from '../stage/studio'

const { folder } = emptyStudio()
const from = () => join(folder(), 'backup', 'papers')
const to = () => join(folder(), 'papers')

function put(where: string, name: string, words: string): void {
	mkdirSync(where, { recursive: true })
	writeFileSync(join(where, name), words)
}
const words = (name: string) => readFileSync(join(to(), name), 'utf8')

describe('the files of signed documents are carried', () => {
	test('where there are none, and no folder is made', () => {
		carryFiles(from(), to())
		expect(existsSync(to())).toBe(false)
	})

	test('each under its name, into a folder that only its owner opens', () => {
		put(from(), 'one.pdf', 'the first')
		put(from(), 'two.pdf', 'the second')
		carryFiles(from(), to())
		expect(readdirSync(to()).toSorted()).toEqual(['one.pdf', 'two.pdf'])
		expect([words('one.pdf'), words('two.pdf')]).toEqual(['the first', 'the second'])
		expect(statSync(to()).mode & 0o777).toBe(0o700)
	})

	test('without what was broken off, and without what is no such file', () => {
		put(from(), 'one.pdf.coming', 'the fir')
		put(from(), 'notes.txt', 'a note')
		put(from(), 'two.pdf', 'the second')
		carryFiles(from(), to())
		expect(readdirSync(to())).toEqual(['two.pdf'])
	})

	test('over what was broken off there before, and not over what stands', () => {
		put(from(), 'one.pdf', 'the first')
		put(from(), 'two.pdf', 'the second')
		put(to(), 'one.pdf.coming', 'the fir')
		put(to(), 'two.pdf', 'as it stands')
		carryFiles(from(), to())
		carryFiles(from(), to())
		expect(readdirSync(to()).toSorted()).toEqual(['one.pdf', 'two.pdf'])
		expect([words('one.pdf'), words('two.pdf')]).toEqual(['the first', 'as it stands'])
		expect(readFileSync(join(from(), 'two.pdf'), 'utf8')).toBe('the second')
	})
})
