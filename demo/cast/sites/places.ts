import { businessPlaces } from './businesses'
import { householdPlaces } from './households'

export const places = { ...businessPlaces, ...householdPlaces }
export type PlaceKey = keyof typeof places
