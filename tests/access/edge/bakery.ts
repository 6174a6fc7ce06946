import { beforeAll } from 'vitest'
import { open } from '../site/here'
import { snapshotAtRest } from '../site/snapshot'
import { draftOf, type Things, thingsOf } from '../site/things'

/** What the bakery has; its draft; and the record before anybody asked. */
export let things: Things
export let draft: unknown
export let before: Record<string, string>

beforeAll(async () => {
	things = thingsOf(open.site.folder, open.site.cast, 'bakery')
	draft = draftOf(open.site.folder, things.proposal)
	before = await snapshotAtRest(open.site.folder)
})
