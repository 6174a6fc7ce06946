export type ChipColour = { readonly name: string; readonly hex: string; readonly echoes: string }

/** A palette as a paint strip: each colour a named chip, with what it echoes in words under it. */
export function Strip({ palette, tall = false }: { palette: readonly ChipColour[]; tall?: boolean }) {
	return (
		<ul className="flex">
			{palette.map(({ name, hex, echoes }) => (
				<li key={`${name} ${hex}`} className="min-w-0 flex-1">
					<svg
						width="100%"
						height={tall ? 72 : 48}
						preserveAspectRatio="none"
						viewBox="0 0 1 1"
						aria-hidden="true"
						className="block"
					>
						<rect width="1" height="1" fill={hex} />
					</svg>
					<p className="mt-1.5 pe-1.5 text-[0.8125rem] leading-tight hyphens-auto wrap-break-word">
						<b className="font-semibold">{name}</b>
						{echoes !== '' && <span className="mt-0.5 block text-soft">{echoes}</span>}
					</p>
				</li>
			))}
		</ul>
	)
}
