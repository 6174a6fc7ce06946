const shape = /^\/(?![/\\])[\w\-./?=&%~]{0,300}$/

/** A path of this site to go on to; the start for anything that could lead elsewhere. */
export function localPath(text: string | null | undefined): string {
	return text && shape.test(text) ? text : '/'
}
