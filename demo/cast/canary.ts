/** How every word begins that only the studio may read, when a test is to find it where it should not be. */
export const canaryPrefix = 'CANARY-'

export type Private = 'supplier' | 'supplier-note' | 'studio-note' | 'recipe-note' | 'visit-note'

/** The studio's own words as the cast has them, or a sentinel in their place. */
export type Tell = (what: Private, key: string, words: string) => string

export const tellPlainly: Tell = (_what, _key, words) => words
export const tellCanaries: Tell = (what, key) => `${canaryPrefix}${what}-${key}`
