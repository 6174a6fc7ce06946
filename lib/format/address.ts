/** "m…@ninefold.example": enough for its owner to know it by. */
export function masked(address: string): string {
	const [name = '', domain = ''] = address.split('@')
	return `${name.slice(0, 1)}…@${domain}`
}
