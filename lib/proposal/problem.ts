/** What stops a draft from being published, and where: a path into the draft such as `options.b.pots`. */
export type Problem = { readonly at: string; readonly says: string }
