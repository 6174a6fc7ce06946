import { numberWord } from '@/lib/format/words'
import { photoAddress } from '@/lib/visit/photo'
import type { PhotoSide } from '@/lib/visit/visit'
import { sideWord } from '@/lib/visit/words'

type Photo = { readonly id: string; readonly side: PhotoSide; readonly width: number; readonly height: number }
type Props = {
	readonly photos: readonly Photo[]
	/** What they belong to, for a reader who does not see them. */
	readonly of: string
	readonly height?: 64 | 104
}

const sides = ['wrong', 'before', 'after'] as const

function Thumb({ photo, says, height }: { photo: Photo; says: string; height: number }) {
	return (
		<a href={photoAddress(photo.id, 'large')} className="block">
			<img
				src={photoAddress(photo.id, 'small')}
				alt={says}
				width={Math.round((height * photo.width) / photo.height)}
				height={height}
				loading="lazy"
				className="photo"
			/>
		</a>
	)
}

/** Small photos that lead to the large ones, by what they show. */
export function Photos({ photos, of, height = 104 }: Props) {
	const shown = sides.map((side) => photos.filter((photo) => photo.side === side)).filter((some) => some.length > 0)
	if (shown.length === 0) return null
	return (
		<div className="mt-3 flex flex-wrap gap-x-4 gap-y-3">
			{shown.map((some) => {
				const word = sideWord(some[0]?.side ?? 'after')
				return (
					<figure key={word}>
						<div className="flex flex-wrap gap-2">
							{some.map((photo, index) => (
								<Thumb
									key={photo.id}
									photo={photo}
									height={height}
									says={`${word}, ${of}${some.length > 1 ? `, ${numberWord(index + 1).toLowerCase()} of ${some.length}` : ''}`}
								/>
							))}
						</div>
						<figcaption className="mt-1 text-sm text-soft">{word}</figcaption>
					</figure>
				)
			})}
		</div>
	)
}
