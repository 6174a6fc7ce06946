import { describe } from 'vitest'
import { finds, holds } from '../code/judge'
import { type Keeping, strayPackages } from '../rules/packages'
import { type Carried, impure } from '../rules/pure'

/** Libraries on which `lib/` rests: the same answer to the same question, and no look outside. */
const carried: readonly Carried[] = [
	{ name: 'zod', because: 'turns text into core types' },
	{ name: 'dinero.js', because: 'money in whole cents' },
	{ name: 'canonicalize', because: 'canonical JSON (RFC 8785), which is hashed' },
	{ name: 'culori', because: 'colour spaces and distances' },
]

const keepings: readonly Keeping[] = [
	{
		names: ['next'],
		in: ['app', 'proxy.ts', 'instrumentation.ts', 'next.config.mjs'],
		because: 'the trade and the record outlive the framework',
		instead: 'hand in what it tells',
	},
	{
		names: ['next-auth', 'next/headers'],
		in: ['app/server'],
		because: 'one place knows cookies, headers and sessions',
		instead: 'let a function of app/server read or set it, and call that',
	},
	{
		names: ['drizzle-orm', 'drizzle-kit', 'better-sqlite3', '@auth/drizzle-adapter'],
		in: ['db', 'e2e/site/record.ts'],
		because: 'SQL stays inside the record; a story counts rows in the file of a site that it does not run itself',
		instead: 'call a function of `db/`',
	},
]

const found = (text: string, line = 1) => ({ files: { 'lib/a.ts': text }, at: [`lib/a.ts:${line}`] })

describe('lib takes nothing that is not handed in', () => {
	holds('lib knows no clock, no chance, no machine, no network and no framework', (code) => impure(code, carried))
	finds(
		(code) => impure(code, carried),
		[
			{ name: 'a file of the machine', ...found("import { readFileSync } from 'node:fs'") },
			{ name: 'a module of Node without its prefix', ...found("import { join } from 'path'") },
			{ name: 'more of node:crypto than its hash', ...found("import { createHash, randomBytes } from 'node:crypto'") },
			{ name: 'all of node:crypto', ...found("import * as hashes from 'node:crypto'") },
			{ name: 'the clock', ...found('\nconst at = Date.now()', 2) },
			{ name: 'the clock as a date', ...found('const at = new Date()') },
			{ name: 'the clock as text', ...found('const at = Date()') },
			{ name: 'the clock by another name', ...found('const { now } = Date') },
			{ name: 'the clock in a formatter', ...found("new Intl.DateTimeFormat('en-GB').format()") },
			{ name: 'the clock of the page', ...found('const at = performance.now()') },
			{ name: 'chance', ...found('const n = Math.random()') },
			{ name: 'chance by another name', ...found('const { random } = Math') },
			{ name: 'a fresh id', ...found('const id = crypto.randomUUID()') },
			{ name: 'fresh bytes', ...found('crypto.getRandomValues(new Uint8Array(16))') },
			{ name: 'the environment', ...found('const rate = process.env.RATE') },
			{ name: 'the network', ...found("const a = () => fetch('https://a.example')") },
			{ name: 'a pause', ...found('setTimeout(() => 1, 10)') },
			{ name: 'state on globalThis', ...found('globalThis.kept = 1') },
			{ name: 'bytes that only Node has', ...found("const a = Buffer.from('a')") },
			{ name: 'the time zone of the machine', ...found('const day = (date: Date) => date.getDate()') },
			{ name: 'a date put together in the time zone of the machine', ...found('const a = new Date(2026, 9, 31)') },
			{ name: 'the framework', ...found("import { notFound } from 'next/navigation'") },
			{ name: 'the sign-in library', ...found("import type { Session } from 'next-auth'") },
			{ name: 'a component', ...found("import { useState } from 'react'") },
			{ name: 'what draws a component', ...found("import { render } from 'react-dom/server'") },
			{ name: 'SQL', ...found("import { eq } from 'drizzle-orm'") },
			{ name: 'the database', ...found("import Database from 'better-sqlite3'") },
			{ name: 'a library that makes chance', ...found("import { v7 } from 'uuid'") },
			{
				name: 'nothing in what was handed in',
				files: {
					'lib/a.ts': [
						"import { createHash } from 'node:crypto'",
						"import { USD } from 'dinero.js/currencies'",
						'type Machine = { process: string; fetch(): void; Date: Date }',
						'export const later = (at: string, ms: number) => new Date(Date.parse(at) + ms).toISOString()',
						'export const most = (all: number[]) => Math.max(...all)',
						'export const of = ({ process: name }: Machine) => ({ crypto: name, at: name instanceof Date })',
						'export const told = (format: Intl.DateTimeFormat, at: Date) => format.format(at)',
					].join('\n'),
					'db/a.ts': 'const at = Date.now()',
				},
				at: [],
			},
		],
	)
})

describe('each library in its place', () => {
	const only = (names: string) => (code: Parameters<typeof strayPackages>[0]) =>
		strayPackages(
			code,
			keepings.filter((row) => row.names.includes(names)),
		)
	holds('next is known in app alone', only('next'))
	holds('next-auth and next/headers are known in app/server alone', only('next-auth'))
	holds('drizzle and SQLite are known in db alone', only('drizzle-orm'))
	finds(
		(code) => strayPackages(code, keepings),
		[
			{
				name: 'the record ends a request',
				files: { 'db/a.ts': "import { notFound } from 'next/navigation'" },
				at: ['db/a.ts:1'],
			},
			{
				name: 'the cast imports the framework',
				files: { 'demo/run.mjs': "import next from 'next'" },
				at: ['demo/run.mjs:1'],
			},
			{
				name: 'a page reads cookies',
				files: { 'app/page.tsx': "import { cookies } from 'next/headers'" },
				at: ['app/page.tsx:1'],
			},
			{
				name: 'a route knows the sign-in library',
				files: {
					'app/api/route.ts': "import NextAuth from 'next-auth'\nconst jwt = await import('next-auth/jwt')",
				},
				at: ['app/api/route.ts:1', 'app/api/route.ts:2'],
			},
			{
				name: 'a page writes SQL, a story opens the file',
				files: {
					'app/page.tsx': "import { eq } from 'drizzle-orm'",
					'e2e/a.ts': "import Database from 'better-sqlite3'",
				},
				at: ['app/page.tsx:1', 'e2e/a.ts:1'],
			},
			{
				name: 'the session knows the adapter',
				files: { 'app/server/auth.ts': "import { DrizzleAdapter } from '@auth/drizzle-adapter'" },
				at: ['app/server/auth.ts:1'],
			},
			{
				name: 'a type of SQL in the app',
				files: { 'app/server/a.ts': "import type { SQL } from 'drizzle-orm/sqlite-core'" },
				at: ['app/server/a.ts:1'],
			},
			{
				name: 'nothing in its own place',
				files: {
					'app/page.tsx': "import Link from 'next/link'",
					'proxy.ts': "import { NextResponse } from 'next/server'",
					'app/server/session.ts': "import { cookies } from 'next/headers'",
					'db/open.ts': "import Database from 'better-sqlite3'",
					'tests/db/a.test.ts': "import Database from 'better-sqlite3'",
					'lib/a.ts': "import a from 'next-of-kin'",
				},
				at: [],
			},
		],
	)
})
