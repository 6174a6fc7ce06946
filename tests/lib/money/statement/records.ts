/**
 * Reads comma-separated values by the grammar of RFC 4180, section 2, character by character; its own
 * reading, not the writer's. Every record ends with CRLF.
 */
export function records(text: string): string[][] {
	const rows: string[][] = []
	let row: string[] = []
	let field = ''
	let isInside = false
	for (let at = 0; at < text.length; at += 1) {
		const [now, next] = [text.charAt(at), text.charAt(at + 1)]
		if (isInside && now === '"' && next === '"') {
			field += '"'
			at += 1
		} else if (now === '"') isInside = !isInside
		else if (isInside) field += now
		else if (now === ',') {
			row.push(field)
			field = ''
		} else if (now === '\r' && next === '\n') {
			rows.push([...row, field])
			row = []
			field = ''
			at += 1
		} else field += now
	}
	return rows
}
