import { expect, type Locator, type Page } from '@playwright/test'

/** What is wrong with how the focus shows, in words; nothing when it is in view, outlined and covered by nothing. */
const focusFaults = (page: Page): Promise<string[]> =>
	page.evaluate(() => {
		const focused = document.activeElement
		if (!(focused instanceof HTMLElement) || focused === document.body) return ['nothing has the focus']
		const { top, bottom, left, right } = focused.getBoundingClientRect()
		const { outlineStyle, outlineWidth } = getComputedStyle(focused)
		const bar = document.querySelector('[aria-label="Your answer"]')
		const barTop = bar === null || bar.contains(focused) ? innerHeight : bar.getBoundingClientRect().top
		const hit = document.elementFromPoint((left + right) / 2, (top + bottom) / 2)
		const faults: readonly (readonly [fault: string, isSo: boolean])[] = [
			['no outline', outlineStyle === 'none' || Number.parseFloat(outlineWidth) < 2],
			['above the window', top < -1],
			['below the window', bottom > innerHeight + 1],
			['under the bar', bottom > barTop + 1],
			['under something else', hit === null || !(focused.contains(hit) || hit.contains(focused))],
		]
		const name = `${focused.tagName} ${focused.textContent?.slice(0, 40)}`
		return faults.filter(([, isSo]) => isSo).map(([fault]) => `${fault}: ${name}`)
	})

const mostStops = 60

/** Presses Tab until `target` has the focus, and looks at every stop on the way. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
	const isThere = () => target.evaluate((element) => element === document.activeElement)
	for (let stops = 0; stops < mostStops; stops += 1) {
		await page.keyboard.press('Tab')
		expect.soft(await focusFaults(page)).toEqual([])
		if (await isThere()) return
	}
	throw new Error(`After ${mostStops} stops the focus is not on ${target}.`)
}
