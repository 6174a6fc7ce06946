import { canBeLent } from '../recipe/material'
import type { Day } from '../units/day'
import type { Draft, DraftExtra, DraftLine, DraftOption } from './draft'
import type { Facts } from './facts'
import { cardsOf } from './job-of'
import type { Problem } from './problem'

const problem = (at: string, says: string): Problem => ({ at, says })
const when = (is: boolean, at: string, says: string): Problem[] => (is ? [problem(at, says)] : [])

function dateProblems({ window: { from, to }, answerBy }: Draft, today: Day): Problem[] {
	if (from === null || to === null) return [problem(`window.${from === null ? 'from' : 'to'}`, 'Say when it goes in.')]
	if (answerBy === null) return [problem('answerBy', 'Say by when you need the answer.')]
	return [
		...when(to < from, 'window.to', 'The install window ends before it begins.'),
		...when(answerBy < today, 'answerBy', 'The day to answer by has passed.'),
		...when(answerBy > from, 'answerBy', 'The answer would come after the first day of the install.'),
	]
}

function lineProblems(lines: readonly DraftLine[], at: string, of: string, { materials }: Facts): Problem[] {
	return lines.flatMap(({ material, count, holding }, index) => {
		const [found, line] = [materials.get(material), `${at}.lines.${index}`]
		if (found === undefined)
			return [problem(`${line}.material`, `${of}: one line names a material that is not in the catalogue.`)]
		return [
			...when(found.pack === null, `${line}.material`, `${of}: ${found.name} has no pack with a price yet.`),
			...when(count.value === 0, `${line}.count`, `${of}: ${found.name} has a count of nothing.`),
			...when(
				holding === 'lent' && !canBeLent(found.kind),
				`${line}.holding`,
				`${of}: ${found.name} does not come back, so it cannot be lent.`,
			),
		]
	})
}

function optionProblems(option: DraftOption, draft: Draft, facts: Facts): Problem[] {
	const at = `options.${option.key}`
	const called = option.name === '' ? 'A palette' : `“${option.name}”`
	const pots = cardsOf(draft, facts).flatMap(({ id, name }) => {
		const lines = option.pots.find(({ container }) => container === id)?.lines ?? []
		const pot = `${at}.pots.${id}`
		if (lines.length === 0) return [problem(pot, `${called}: nothing is in ${name} yet.`)]
		return lineProblems(lines, pot, `${called}, ${name}`, facts)
	})
	const nameless = option.palette.findIndex(({ name }) => name === '')
	return [
		...when(option.name === '', `${at}.name`, 'Give the palette a name.'),
		...when(option.palette.length === 0, `${at}.palette`, `${called} has no colours yet.`),
		...when(nameless >= 0, `${at}.palette.${nameless}.name`, `${called}: a colour has no name.`),
		...pots,
	]
}

function extraProblems({ key, name, place, minutes, lines }: DraftExtra, draft: Draft, facts: Facts): Problem[] {
	const at = `extras.${key}`
	const isVisited = cardsOf(draft, facts).some((card) => card.place === place)
	return [
		...when(name === '', `${at}.name`, 'Give the extra a name.'),
		...when(
			!isVisited,
			`${at}.place`,
			`${name || 'The extra'} belongs to a place that has no container in this proposal.`,
		),
		...when(
			lines.length === 0 && minutes === 0,
			`${at}.minutes`,
			`${name || 'The extra'} has neither material nor minutes, so no price.`,
		),
		...lineProblems(lines, at, name || 'The extra', facts),
	]
}

function wholeProblems(draft: Draft, facts: Facts): Problem[] {
	const names = draft.options.map(({ name }) => name.toLowerCase()).filter((name) => name !== '')
	const ids = new Set<string>(draft.containers.map(({ id }) => id))
	const { agreement } = draft
	return [
		...when(!facts.hasApprover, 'client', 'Nobody at this client may approve yet: invite a contact first.'),
		...when(draft.title === '', 'title', 'Give the proposal a title.'),
		...when(draft.letter === '', 'letter', 'Write the letter.'),
		...when(ids.size === 0, 'containers', 'Choose the containers.'),
		...when(cardsOf(draft, facts).length < draft.containers.length, 'containers', 'A container is not this client’s.'),
		...when(ids.size < draft.containers.length, 'containers', 'A container is there twice.'),
		...when(draft.options.length === 0, 'options', 'Make at least one palette.'),
		...when(new Set(names).size < names.length, 'options', 'Two palettes have the same name.'),
		...when(
			agreement.is === 'fixed' && !agreement.containers.some((id) => ids.has(id)),
			'agreement',
			'The fixed price covers none of the containers.',
		),
	]
}

/** Everything that stops a draft, in the order of the editor; nothing when it can be published. */
export function problems(draft: Draft, facts: Facts, today: Day): Problem[] {
	return [
		...wholeProblems(draft, facts),
		...dateProblems(draft, today),
		...draft.options.flatMap((option) => optionProblems(option, draft, facts)),
		...draft.extras.flatMap((extra) => extraProblems(extra, draft, facts)),
	]
}
