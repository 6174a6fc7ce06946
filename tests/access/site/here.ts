import { afterAll, beforeAll } from 'vitest'
import { type OpenSite, openSite } from './open'

/** The site that the tests of this file ask: open from before the first of them to after the last. */
export let open: OpenSite

beforeAll(async () => {
	open = await openSite()
})

afterAll(async () => {
	await open.close()
})
