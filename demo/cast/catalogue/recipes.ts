import { autumnRecipes } from './autumn-recipes'
import { winterRecipes } from './winter-recipes'

export const recipes = { ...winterRecipes, ...autumnRecipes }
export type RecipeKey = keyof typeof recipes
