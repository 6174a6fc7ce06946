import type { Page } from '@playwright/test'

export type Hand = { readonly clicks: () => number; readonly keys: () => number }

/** Counts what a person's hand does on every page that is opened from now on. */
export async function handOn(page: Page): Promise<Hand> {
	const done = { click: 0, keydown: 0 }
	await page.exposeFunction('doneByHand', (what: keyof typeof done) => {
		done[what] += 1
	})
	await page.addInitScript(() => {
		const tell: unknown = Reflect.get(window, 'doneByHand')
		for (const what of ['click', 'keydown'])
			addEventListener(what, () => typeof tell === 'function' && tell(what), { capture: true })
	})
	return { clicks: () => done.click, keys: () => done.keydown }
}
