/** One plain sentence and the way back. */
export function Told({ title, says }: { readonly title: string; readonly says: string }) {
	return (
		<main id="main" className="mx-auto max-w-xl px-5 pt-[16vh] pb-20">
			<title>{title}</title>
			<h1 className="text-4xl">{title}</h1>
			<p className="mt-3 text-lg">{says}</p>
			<p className="mt-8">
				<a className="act" href="/">
					To the start
				</a>
			</p>
		</main>
	)
}
