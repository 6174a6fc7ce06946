declare const mark: unique symbol

/** A `T` that has passed its one checking constructor; a plain `T` is refused in its place. */
export type Brand<T, Name extends string> = T & { readonly [mark]: Name }
