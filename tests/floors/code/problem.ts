export type Problem = {
	readonly file: string
	readonly line: number
	/** What stands there. */
	readonly is: string
	/** What to do about it. */
	readonly instead: string
}

export const placeOf = ({ file, line }: Problem): string => `${file}:${line}`

export const told = ({ file, line, is, instead }: Problem): string => `${file}:${line} ${is}. Instead: ${instead}.`
