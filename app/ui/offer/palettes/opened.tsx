'use client'
import { type ReactNode, useState } from 'react'

type Props = { readonly isOpen: boolean; readonly className?: string; readonly children: ReactNode }

/** A part to fold away: as it came open or shut, and from then on as whoever reads it leaves it. */
export function Opened({ isOpen, className, children }: Props) {
	const [asItCame] = useState(isOpen)
	return (
		<details open={asItCame} className={className}>
			{children}
		</details>
	)
}
