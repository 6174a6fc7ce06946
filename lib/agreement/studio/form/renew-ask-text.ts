import { type RenewalAsk, renewalAsk } from './renew-form'

/** What the page was asked for, as its address carries it: "year=2027&by=percent&rise=4&step=500". */
export const renewAskText = ({ year, ...ask }: RenewalAsk): string =>
	String(new URLSearchParams({ ...(year !== undefined && { year: String(year) }), ...ask }))

/** The same out of a form that came back with it, whatever else was sent in its place. */
export const renewAskAgain = (sent: unknown): string =>
	renewAskText(renewalAsk(Object.fromEntries(new URLSearchParams(typeof sent === 'string' ? sent : ''))))
