type Props = {
	readonly path: string
	readonly hash: string
	readonly maySign: boolean
	readonly pdf: 'none' | 'to read' | 'signed'
}

/** What can be done with it: signing for who may while it waits, the file for who may read all of it. */
export function Acts({ path, hash, maySign, pdf }: Props) {
	if (!maySign && pdf === 'none') return null
	return (
		<p className="no-print mt-6 flex flex-wrap items-center gap-x-6 gap-y-3">
			{maySign && (
				<a className="act first" href={`${path}/consent?document=${hash}`}>
					Go on to sign
				</a>
			)}
			{pdf !== 'none' && (
				<a className={pdf === 'signed' ? 'act' : 'inline-flex min-h-11 items-center'} href={`${path}/pdf`}>
					{pdf === 'signed' ? 'The signed PDF' : 'Read it as a PDF'}
				</a>
			)}
			{maySign && (
				<a className="inline-flex min-h-11 items-center" href={`${path}/decline?document=${hash}`}>
					Decline it
				</a>
			)}
		</p>
	)
}
