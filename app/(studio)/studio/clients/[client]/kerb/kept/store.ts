import { type Entry, entrySchema } from './entry'

let opened: Promise<IDBDatabase> | undefined

function made(): Promise<IDBDatabase> {
	return new Promise((resolve, reject) => {
		const asked = indexedDB.open('doorsill-kerb', 1)
		asked.onupgradeneeded = () => {
			asked.result.createObjectStore('entry', { keyPath: 'id' })
			asked.result.createObjectStore('photo')
		}
		asked.onsuccess = () => resolve(asked.result)
		asked.onerror = () => reject(asked.error)
	})
}

type Store = 'entry' | 'photo'

/** One transaction; what was asked is there once the browser has written it. */
async function within<T>(
	mode: 'readonly' | 'readwrite',
	ask: (store: (name: Store) => IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
	opened ??= made()
	const database = await opened
	return new Promise((resolve, reject) => {
		const act = database.transaction(['entry', 'photo'], mode, { durability: 'strict' })
		const asked = ask((name) => act.objectStore(name))
		act.oncomplete = () => resolve(asked.result)
		act.onabort = () => reject(act.error)
		act.onerror = () => reject(act.error)
	})
}

/** What this person wrote down and the studio does not have yet, in the order in which it was begun. */
export async function entriesOf(person: string): Promise<Entry[]> {
	const all: unknown[] = await within('readonly', (store) => store('entry').getAll())
	return all
		.flatMap((each) => entrySchema.safeParse(each).data ?? [])
		.filter((entry) => entry.person === person)
		.toSorted((a, b) => a.at - b.at)
}

export const putEntry = (entry: Entry) => within('readwrite', (store) => store('entry').put(entry))

export async function photoOf(id: string): Promise<Blob | null> {
	const found: unknown = await within('readonly', (store) => store('photo').get(id))
	return found instanceof Blob ? found : null
}

export const putPhoto = (id: string, photo: Blob) => within('readwrite', (store) => store('photo').put(photo, id))

export const dropPhoto = (id: string) => within('readwrite', (store) => store('photo').delete(id))

export const letGo = (id: string) =>
	within('readwrite', (store) => {
		store('photo').delete(id)
		return store('entry').delete(id)
	})
