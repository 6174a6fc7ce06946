type Props = { readonly keep: string; readonly drop: string; readonly isNew: boolean }

/** Which of the two was pressed is the form's last word. */
export function KeepOrDrop({ keep, drop, isNew }: Props) {
	return (
		<p className="mt-8 flex flex-wrap items-center gap-4">
			<button type="submit" name="does" value="keep" className="act first">
				{keep}
			</button>
			{!isNew && (
				<button type="submit" name="does" value="drop" className="does">
					{drop}
				</button>
			)}
		</p>
	)
}
