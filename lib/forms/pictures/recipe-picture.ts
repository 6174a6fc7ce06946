import { z } from 'zod'
import { type PotName, potNames } from '../../recipe/library/pots'
import { type Cut, cuts } from './picture-address'

export type RecipePicture = { readonly pot: PotName; readonly cut: Cut }

const isCut = (text: string): text is Cut => Object.hasOwn(cuts, text)
const ask = z.strictObject({ pot: z.enum(potNames), cut: z.string().refine(isCut) })

/** The address of a recipe's picture, grown to one of the pots. */
export const recipePicture = (recipe: string, { pot, cut }: RecipePicture): string =>
	`/studio/recipes/${recipe}/picture?${new URLSearchParams({ pot, cut })}`

/** What such an address asks for; undefined for any other query. */
export function readRecipePicture(query: URLSearchParams): RecipePicture | undefined {
	const found = ask.safeParse({ pot: query.get('pot') ?? 'reference', cut: query.get('cut') ?? 'full' })
	return found.success ? found.data : undefined
}
