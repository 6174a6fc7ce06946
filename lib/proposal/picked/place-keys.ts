/** Places by their ids, each with the key of the option that it takes instead of the one of the whole. */
export type PlaceKeys = Readonly<Record<string, string>>
