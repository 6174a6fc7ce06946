/** What is defined once in a document and used by its id. */
export type Defs = {
	/** The id under which `make` is defined; the same text twice has one id. */
	readonly add: (make: (id: string) => string) => string
	readonly svg: () => string
}

export function newDefs(): Defs {
	const ids = new Map<string, string>()
	const texts: string[] = []
	const add = (make: (id: string) => string) => {
		const key = make('')
		const known = ids.get(key)
		if (known !== undefined) return known
		const id = `d${ids.size.toString(36)}`
		ids.set(key, id)
		texts.push(make(id))
		return id
	}
	return { add, svg: () => (texts.length === 0 ? '' : `<defs>${texts.join('')}</defs>`) }
}
