import type { Locator, Page } from '@playwright/test'

export type Group = 'Waiting for them' | 'Waiting for us' | 'Settled'

/** One group of the season's ledger. */
export const groupOn = (page: Page, group: Group): Locator =>
	page.getByRole('rowgroup').filter({ has: page.getByRole('rowheader', { name: group }) })

/** A client's row, wherever it stands or within one group. */
export const rowOf = (within: Page | Locator, client: string): Locator =>
	within.getByRole('row').filter({ hasText: client })
