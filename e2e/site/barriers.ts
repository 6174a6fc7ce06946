import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from '@playwright/test'

/** Every rule of axe-core for WCAG 2.0, 2.1 and 2.2, levels A and AA. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']

/** What keeps somebody out of the page, by rule and place; nothing when axe-core finds nothing. */
export async function barriers(page: Page): Promise<string[]> {
	const { violations } = await new AxeBuilder({ page })
		.setLegacyMode()
		.options({ resultTypes: ['violations'] })
		.withTags(tags)
		.analyze()
	return violations.flatMap(({ id, nodes }) =>
		nodes.map(({ target, failureSummary }) => `${id} at ${target.join(' ')}: ${failureSummary}`),
	)
}

/** How far the page is wider than its window, in CSS px, and by what. WCAG 2.2, 1.4.10: nothing scrolls both ways. */
export const overflow = (page: Page): Promise<{ readonly px: number; readonly by: readonly string[] }> =>
	page.evaluate(() => {
		const { scrollWidth, clientWidth } = document.documentElement
		const wide = [...document.querySelectorAll('body *')].filter(
			(element) => element.getBoundingClientRect().right > clientWidth + 1,
		)
		return {
			px: scrollWidth - clientWidth,
			by: scrollWidth > clientWidth ? wide.map(({ tagName, className }) => `${tagName} ${className}`) : [],
		}
	})

/** Whatever acts and is lower than 44 CSS px, with its height. Links within text are as high as the text. */
export const lowTargets = (page: Page): Promise<string[]> =>
	page.evaluate(() =>
		[
			...document.querySelectorAll<HTMLElement>(
				'button, summary, select, input:not([type=hidden], .tick), label:has(.tick), .act, .does',
			),
		]
			.filter((element) => element.checkVisibility())
			.map((element) => ({ element, px: element.getBoundingClientRect().height }))
			.filter(({ px }) => px < 43.99)
			.map(({ element, px }) => `${px} px: ${element.textContent || element.getAttribute('name')}`),
	)

/** Whatever moves of itself or glides. */
export const movingParts = (page: Page): Promise<string[]> =>
	page.evaluate(() =>
		[...document.querySelectorAll('*')]
			.filter((element) => {
				const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element)
				return /[1-9]/.test(transitionDuration) || animationName !== 'none' || scrollBehavior !== 'auto'
			})
			.map(({ tagName, className }) => `${tagName} ${className}`),
	)
