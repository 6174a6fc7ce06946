'use client'
import { type ReactNode, useEffect, useRef, useState } from 'react'

const narrow = '(max-width: 40rem)'

type Props = {
	readonly title: string
	/** What is folded away, in a few words. */
	readonly says: string
	/** Whether there is anything to fold away at first. */
	readonly hasMuch: boolean
	readonly children: ReactNode
}

/** A part that stands open, but on a phone begins folded to one line; from then on it is as it was left. */
export function Folded({ title, says, hasMuch, children }: Props) {
	const [isOpen, setIsOpen] = useState(true)
	const folds = useRef(hasMuch)
	useEffect(() => {
		if (folds.current && matchMedia(narrow).matches) setIsOpen(false)
	}, [])
	return (
		<details open={isOpen} onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
			<summary className="cursor-pointer py-1">
				<h3 className="inline font-semibold">{title}</h3> <span className="ms-2 text-sm text-soft">{says}</span>
			</summary>
			{children}
		</details>
	)
}
