import { expect, test } from 'vitest'
import { type Code, codeOf } from './code'
import { filesOfProject } from './files'
import { type Problem, placeOf, told } from './problem'

export type Rule = (code: Code) => readonly Problem[]

/** A few lines of source, and where the rule must find fault with them: nowhere, where it must let them through. */
export type Case = {
	readonly name: string
	readonly files: { readonly [path: string]: string }
	readonly at: readonly string[]
}

export const project: Code = codeOf(filesOfProject())

export function holds(name: string, rule: Rule): void {
	test(name, () => {
		expect(rule(project).map(told)).toEqual([])
	})
}

/** Shows that a rule can fail: the same checker over source that breaks it. */
export function finds(rule: Rule, cases: readonly Case[]): void {
	for (const { name, files, at } of cases)
		test(`finds ${name}`, () => {
			expect(rule(codeOf(new Map(Object.entries(files)))).map(placeOf)).toEqual(at)
		})
}
