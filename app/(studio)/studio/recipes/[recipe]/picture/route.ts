import { drawn, notDrawn } from '@/app/server/picture/drawn'
import { viewer } from '@/app/server/sign-in/session'
import { readLibrary } from '@/db/catalogue/library'
import { readRecipePicture } from '@/lib/forms/pictures/recipe-picture'
import { recipeScene } from '@/lib/recipe/library/scene'

/** A recipe grown to one of the pots that the studio looks at it in. */
export async function GET(
	request: Request,
	{ params }: RouteContext<'/studio/recipes/[recipe]/picture'>,
): Promise<Response> {
	const { recipe: of } = await params
	const ask = readRecipePicture(new URL(request.url).searchParams)
	const who = await viewer()
	const library = ask && (await readLibrary(who))
	const recipe = library?.recipes.find(({ id }) => id === of)
	if (ask === undefined || library === undefined || recipe === undefined) return notDrawn(request, who)
	return drawn(recipeScene(recipe, ask.pot, library.materials, library.lengths), ask.cut, 'private, no-store')
}
