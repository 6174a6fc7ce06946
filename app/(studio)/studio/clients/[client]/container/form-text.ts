/** The text of a form's boxes as they stand, by their names; files are no text. */
export const formText = (form: HTMLFormElement): Readonly<Record<string, string>> =>
	Object.fromEntries(
		[...new FormData(form)].flatMap(([name, value]) => (typeof value === 'string' ? [[name, value]] : [])),
	)
