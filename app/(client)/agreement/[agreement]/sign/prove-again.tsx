type Props = { readonly address: string; readonly to: string }

/** One button for a fresh link and code; both lead back here. */
export function ProveAgain({ address, to }: Props) {
	return (
		<>
			<h1 className="mt-2 text-4xl">Once more: is this your mailbox?</h1>
			<p className="mt-2 text-lg">
				You signed in more than a day ago. For a signature we ask again. We send a link and a code to{' '}
				<b className="wrap-anywhere">{address}</b>; both work for ten minutes, and bring you back here to sign.
			</p>
			<form method="post" action="/sign-in/ask" className="mt-8">
				<input type="hidden" name="to" value={to} />
				<input type="hidden" name="address" value={address} />
				<button type="submit" className="act first">
					Send me the link
				</button>
			</form>
		</>
	)
}
