/** The same answers as `find`, the last `most` of them kept: for what follows from its key alone and takes long to find. */
export function remembered<Of, Answer>(find: (of: Of) => Answer, keyOf: (of: Of) => string, most: number) {
	const known = new Map<string, Answer>()
	return (of: Of): Answer => {
		const key = keyOf(of)
		const found = known.get(key)
		if (found !== undefined) return found
		const answer = find(of)
		const [oldest] = known.keys()
		if (known.size >= most && oldest !== undefined) known.delete(oldest)
		known.set(key, answer)
		return answer
	}
}
