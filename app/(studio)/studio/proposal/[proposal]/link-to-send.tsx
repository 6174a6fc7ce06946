import { coverSize } from '@/lib/forms/pictures/cover-address'

type Props = { readonly link: string; readonly cover: string }

/** For a text message or a chat: the link that the mail carries, and what is seen of it before anybody signs in. */
export const LinkToSend = ({ link, cover }: Props) => (
	<details className="no-print mt-14 border-t border-line pt-4">
		<summary className="does inline-block">The link, to send by hand</summary>
		<div className="mt-2 flex flex-wrap gap-5">
			<img
				src={cover}
				alt="Season, palettes and the studio’s name"
				width={300}
				height={Math.round((300 / coverSize.width) * coverSize.height)}
				loading="lazy"
				className="border border-line"
			/>
			<label className="min-w-0 flex-1 basis-80">
				<span className="block font-semibold">Link</span>
				<input readOnly value={link} className="box mt-1" />
				<span className="mt-1 block text-soft">
					Where it is passed on it shows this picture: no person, no place, no price. To see the design they sign in.
				</span>
			</label>
		</div>
	</details>
)
