/**
 * What stops a draft from being published, and where: a path into the draft in which palettes and extras stand by their
 * keys and pots by their container, such as `options.b.pots.<container>.lines.2.count`.
 */
export type Problem = { readonly at: string; readonly says: string }
