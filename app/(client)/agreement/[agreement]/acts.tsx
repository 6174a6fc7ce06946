type Props = { readonly path: string; readonly hash: string; readonly isOpen: boolean }

/** What can be done with it, for who may sign while it waits. */
export function Acts({ path, hash, isOpen }: Props) {
	if (!isOpen) return null
	return (
		<p className="no-print mt-6 flex flex-wrap items-center gap-x-6 gap-y-3">
			<a className="act first" href={`${path}/consent?document=${hash}`}>
				Go on to sign
			</a>
			<a className="inline-flex min-h-11 items-center" href={`${path}/decline?document=${hash}`}>
				Decline it
			</a>
		</p>
	)
}
