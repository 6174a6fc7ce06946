type Named = {
	readonly title: string
	/** The studio's name, in letters that can be drawn. */
	readonly author: string
	/** The file's dates: of what it holds, never of when it was asked for. */
	readonly at: Date
}

/** Signs of a title or an author that a reader shows; the rest is on the page. */
const most = 200

/** What a file says of itself. */
export const documentNamed = ({ title, author, at }: Named) => ({
	...{ title: title.slice(0, most), author: author.slice(0, most), language: 'en' },
	...{ creator: 'Doorsill', producer: 'Doorsill', creationDate: at, modificationDate: at },
})
