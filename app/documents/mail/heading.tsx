import { Img } from '@react-email/components'
import { coverSize } from '@/lib/forms/pictures/cover-address'
import { mailWidth, type Named } from './pictured'

type Props = { readonly cover: Named; readonly words: { readonly [name: string]: string } }

/** The cover of a design across the whole mail; `words` is the type of its description. */
export const Heading = ({ cover: { cid, alt }, words }: Props) => (
	<Img
		src={`cid:${cid}`}
		alt={alt}
		width={mailWidth}
		height={Math.round((mailWidth / coverSize.width) * coverSize.height)}
		style={{ ...words, margin: 0, width: '100%', height: 'auto' }}
	/>
)
