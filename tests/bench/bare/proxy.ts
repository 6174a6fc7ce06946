/** As `instrumentation.ts`: here so that the site's own is not found. It is asked for no page. */
export function proxy(): void {}

export const config = { matcher: ['/nowhere'] }
