type Props = { readonly words: string; readonly most: number; readonly count: number }

/** Looks for a client; what is looked for is the address of the page. */
export function Search({ words, most, count }: Props) {
	return (
		<search>
			<form action="/studio/clients" className="mt-5 flex flex-wrap items-end gap-3">
				<div className="grow sm:max-w-sm sm:grow">
					<label htmlFor="q" className="block font-semibold">
						Look for a client
					</label>
					<p id="q-hint" className="text-sm text-soft">
						By name, place or contact
					</p>
					<input
						className="box mt-1.5"
						type="search"
						name="q"
						id="q"
						maxLength={most}
						defaultValue={words}
						autoComplete="off"
						aria-describedby="q-hint"
					/>
				</div>
				<button type="submit" className="act">
					Look
				</button>
				{words !== '' && (
					<a href="/studio/clients" className="does inline-flex min-h-11 items-center">
						All clients
					</a>
				)}
			</form>
			{words !== '' && (
				<p className="mt-4" role="status">
					{count === 0 ? 'No client has' : `${count} ${count === 1 ? 'client has' : 'clients have'}`} “
					<span className="wrap-anywhere">{words}</span>” in name, place or contact.
				</p>
			)}
		</search>
	)
}
