import { sql } from 'drizzle-orm'
import { check, type SQLiteColumn, text } from 'drizzle-orm/sqlite-core'
import type { Day, Moment } from '@/lib/units/day'
import type { Hex } from '@/lib/units/hex'
import type { Id } from '@/lib/units/id'

/** Columns of the core's own types: the schema's checks hold what the types promise. */
export const idColumn = <Of extends string>(name: string) => text(name).$type<Id<Of>>()
export const momentColumn = (name: string) => text(name).$type<Moment>()
export const dayColumn = (name: string) => text(name).$type<Day>()
export const hexColumn = (name: string) => text(name).$type<Hex>()

export const oneOf = (name: string, column: SQLiteColumn, values: readonly string[]) =>
	check(name, sql`${column} IN (${sql.raw(values.map((value) => `'${value.replaceAll("'", "''")}'`).join(', '))})`)

export const between = (name: string, column: SQLiteColumn, min: number, max: number) =>
	check(name, sql`${column} BETWEEN ${sql.raw(String(min))} AND ${sql.raw(String(max))}`)
