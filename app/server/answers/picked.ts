import 'server-only'
import { placeKeysIn } from '@/lib/forms/answer/place-keys'
import type { Picked } from '@/lib/proposal/picked/picked-in'
import { all, first } from '../pages'

type Query = Readonly<Record<string, string | string[] | undefined>>

/** What the address of a page says was picked: palette, what single places take, extras, containers left out. */
export const pickedOf = (query: Query): Picked => ({
	option: first(query.option) ?? null,
	places: placeKeysIn(query),
	extras: all(query.extra),
	leftOut: all(query.without),
})
