/** The compiler looks upwards for this file: with one of its own, the bare page does not get the site's. */
export function register(): void {}
