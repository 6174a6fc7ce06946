import type { RowText } from '@/lib/forms/catalogue/recipe-text'
import type { FieldErrors } from '@/lib/forms/read'
import type { KeptMaterial } from '@/lib/recipe/library/library'
import { holdings, roles } from '@/lib/recipe/material'
import { ways } from '@/lib/recipe/recipe'
import { Cell, type Choice, Choose, Write } from './cell'
import { holdingWords, wayHelp, wayWords } from './words'

type Props = {
	readonly rows: readonly RowText[]
	/** Numbers of the rows that are ticked to go. */
	readonly removed: readonly string[]
	readonly errors: FieldErrors
	readonly materials: readonly KeptMaterial[]
}

const usual: Choice = { value: '', label: 'as usual' }
const roleChoices = [usual, ...roles.map((value) => ({ value, label: value }))]
const wayChoices = [usual, ...ways.map((value) => ({ value, label: wayWords[value] }))]
const holdingChoices = [usual, ...holdings.map((value) => ({ value, label: holdingWords[value] }))]

/** Lines for the reference container. Rows to spare stand below; a tick takes a line out, its number moves it. */
export function LineFields({ rows, removed, errors, materials }: Props) {
	const nameOf = (id: string) => materials.find((each) => each.id === id)?.name
	const lines = rows.map(({ material }, row) => {
		const name = nameOf(material)
		return { value: String(row + 1), label: `line ${row + 1}${name === undefined ? '' : `, ${name}`}` }
	})
	const held = [{ value: '', label: '—' }, ...lines]
	return (
		<fieldset className="mt-8">
			<legend className="text-lg font-bold">Lines, for the 18-inch round pot seen all round</legend>
			<p className="max-w-3xl text-soft">
				Leave a row without a material and it is passed over. Tick “remove” to take a line out, change its number to
				move it; more rows come with each save.
			</p>
			<ol className="mt-3">
				{Object.entries(rows).map(([at, row]) => (
					<LineRow
						key={at}
						row={row}
						n={Number(at)}
						isRemoved={removed.includes(at)}
						errors={errors}
						materials={materials}
						held={held}
					/>
				))}
			</ol>
			<details className="mt-4 max-w-3xl">
				<summary className="does inline-block">How each way grows</summary>
				<dl className="mt-2 grid gap-x-6 gap-y-1 sm:grid-cols-[12rem_1fr]">
					{ways.map((way) => (
						<div key={way} className="contents">
							<dt className="font-semibold">{wayWords[way]}</dt>
							<dd>{wayHelp[way]}</dd>
						</div>
					))}
				</dl>
			</details>
		</fieldset>
	)
}

type RowProps = Pick<Props, 'errors' | 'materials'> & {
	readonly row: RowText
	readonly n: number
	readonly isRemoved: boolean
	readonly held: readonly Choice[]
}

function LineRow({ row, n, isRemoved, errors, materials, held }: RowProps) {
	const chosen = materials.filter(({ id, isRetired }) => !isRetired || id === row.material)
	const grouped = roles.map((role) => ({
		role,
		of: chosen.filter((each) => each.role === role).map(({ id, name }) => ({ value: id, label: name })),
	}))
	const at = (field: keyof RowText) => ({ field, n, value: row[field], error: errors[`${field}.${n}`] })
	return (
		<li className="grid grid-cols-6 items-start gap-x-3 gap-y-1 border-t border-line py-3 lg:grid-cols-[3.5rem_1.5fr_7rem_1.2fr_5rem_1.2fr_7.5rem_5rem] lg:py-1.5">
			<Write {...at('at')} />
			<Choose {...at('material')} choices={[{ value: '', label: '—' }]} groups={grouped} />
			<Choose {...at('role')} choices={roleChoices} />
			<Choose {...at('way')} choices={wayChoices} />
			<Write {...at('count')} />
			<Choose {...at('holds')} choices={held} />
			<Choose {...at('holding')} choices={holdingChoices} />
			<Cell field="remove" n={n} error={errors[`remove.${n}`]}>
				<input
					type="checkbox"
					className="tick lg:mt-1"
					id={`remove.${n}`}
					name="remove"
					value={n}
					defaultChecked={isRemoved}
				/>
			</Cell>
		</li>
	)
}
