type Named = readonly (readonly [mark: RegExp, name: string])[]

/** Marks in the order to look for them: many browsers carry the name of another as well. */
const browsers: Named = [
	[/\bEdg(?:e|A|iOS)?\//, 'Edge'],
	[/\bOPR\//, 'Opera'],
	[/\bSamsungBrowser\//, 'Samsung Internet'],
	[/\b(?:Firefox|FxiOS)\//, 'Firefox'],
	[/\b(?:Chrome|Chromium|CriOS)\//, 'Chrome'],
	[/\bSafari\//, 'Safari'],
]
const systems: Named = [
	[/\biPhone\b/, 'an iPhone'],
	[/\biPad\b/, 'an iPad'],
	[/\bAndroid\b/, 'Android'],
	[/\bWindows\b/, 'Windows'],
	[/\bCrOS\b/, 'a Chromebook'],
	[/\bMacintosh\b/, 'a Mac'],
	[/\bLinux\b/, 'Linux'],
]

const nameIn = (named: Named, text: string) => named.find(([mark]) => mark.test(text))?.[1]
const most = 500

/** "Firefox on Android", out of what a browser says of itself (User-Agent, RFC 9110, section 10.1.5); never its own words. */
export function browserWords(userAgent: string): string {
	const text = userAgent.slice(0, most)
	const system = nameIn(systems, text)
	return `${nameIn(browsers, text) ?? 'a browser'}${system === undefined ? '' : ` on ${system}`}`
}
