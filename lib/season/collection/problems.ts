import type { LibraryRecipe } from '../../proposal/design/propose'
import type { Problem } from '../../proposal/problem'
import type { Id } from '../../units/id'
import type { Collection, Design } from './collection'

const when = (is: boolean, at: string, says: string): Problem[] => (is ? [{ at, says }] : [])

const calledOf = ({ name }: Pick<Design, 'name'>) => (name === '' ? 'A design' : `“${name}”`)

function recipeProblems(
	design: Design,
	of: 'pot' | 'box' | 'bowl',
	id: Id<'recipe'> | null,
	recipes: readonly LibraryRecipe[],
): Problem[] {
	const at = `designs.${design.key}.recipes.${of}`
	const called = calledOf(design)
	if (id === null) return when(of === 'pot', at, `${called} has no recipe yet: choose one for pots.`)
	const recipe = recipes.find((each) => each.id === id)
	if (recipe === undefined) return [{ at, says: `${called}: its recipe for a ${of} is no longer in the library.` }]
	return when(
		recipe.lines.length === 0,
		at,
		`${called}: the recipe “${recipe.name}” is empty, so nothing would go into a ${of}.`,
	)
}

function designProblems(design: Design, recipes: readonly LibraryRecipe[]): Problem[] {
	const { key, name, palette } = design
	const at = `designs.${key}`
	const called = calledOf(design)
	return [
		...when(name === '', `${at}.name`, 'Give the design a name.'),
		...when(palette.length === 0, `${at}.palette`, `${called} has no colours yet.`),
		...when(palette.length === 1, `${at}.palette`, `${called} has one colour alone: a palette takes two at least.`),
		...when(
			palette.some((colour) => colour.name === ''),
			`${at}.palette`,
			`${called}: a colour has no name.`,
		),
		...recipeProblems(design, 'pot', design.recipes.pot, recipes),
		...recipeProblems(design, 'box', design.recipes.box, recipes),
		...recipeProblems(design, 'bowl', design.recipes.bowl, recipes),
	]
}

/** What has to be mended before it is applied to anybody, in the order of its page. */
export function problems({ title, letter, designs, extras }: Collection, recipes: readonly LibraryRecipe[]): Problem[] {
	const names = designs.map(({ name }) => name.toLowerCase()).filter((name) => name !== '')
	return [
		...when(title === '', 'title', 'Give it the title that its proposals bear.'),
		...when(letter === '', 'letter', 'Write the letter.'),
		...when(designs.length === 0, 'designs', 'Make at least one design.'),
		...when(new Set(names).size < names.length, 'designs', 'Two designs have the same name.'),
		...designs.flatMap((design) => designProblems(design, recipes)),
		...extras.flatMap(({ key, name, minutes, lines }) => [
			...when(name === '', `extras.${key}`, 'Give the extra a name.'),
			...when(
				lines.length === 0 && minutes === 0,
				`extras.${key}`,
				`${name || 'The extra'} has neither material nor minutes, so no price.`,
			),
		]),
	]
}
