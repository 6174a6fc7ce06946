import type { Metadata } from 'next'
import { v7 } from 'uuid'
import { attemptFor } from '@/app/server/attempt'
import { first } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { studioPage } from '@/app/server/studio/studio-page'
import { ErrorSummary } from '@/app/ui/error-summary'
import { ChoiceField, TextField, TickField } from '@/app/ui/field'
import { one } from '@/app/ui/settings-fields'
import { StudioFrame } from '@/app/ui/studio/studio-frame'
import { listMaterials, type MaterialRow } from '@/db/catalogue/materials'
import { readSettings } from '@/db/studio/studio'
import { traitText } from '@/lib/forms/catalogue/trait-text'
import type { Typed } from '@/lib/forms/read'
import * as lists from '@/lib/recipe/material'
import { saveMaterial } from '../actions'
import { Traits, traitLabels } from './traits'

export const metadata: Metadata = { title: 'Material' }

const on = (is: boolean) => (is ? 'on' : '')

function savedFields(row: MaterialRow | undefined): Typed {
	if (row === undefined) return { piecesPerUnit: '1', hex: '#4f6b4a', freightPercent: '0' }
	const { material, pack, supplier } = row
	const { name, kind, piece, role, unit, piecesPerUnit, hex } = material
	const hazards = {
		isPoisonousToPeople: on(material.isPoisonousToPeople),
		isPoisonousToPets: on(material.isPoisonousToPets),
		hasSmallParts: on(material.hasSmallParts),
	}
	const sold =
		pack === null
			? {}
			: {
					size: String(pack.size),
					price: (pack.priceCents / 100).toFixed(2),
					freightPercent: String(pack.freightPercent),
				}
	return {
		name,
		kind,
		piece,
		role,
		unit,
		piecesPerUnit: String(piecesPerUnit),
		hex,
		...hazards,
		...sold,
		supplier: supplier ?? '',
	}
}

const choices = [
	['kind', 'Kind', lists.kinds],
	['piece', 'Handled as', lists.pieces],
	['role', 'Role', lists.roles],
	['unit', 'Counted by the', lists.units],
] as const

const labels = {
	name: 'Name',
	piecesPerUnit: 'Pieces in one of these',
	hex: 'Its colour',
	supplier: 'Supplier',
	size: 'How many in it',
	price: 'Its price',
	freightPercent: 'Freight, per cent',
}

export default async function MaterialCard({ searchParams }: PageProps<'/studio/materials/card'>) {
	const { who, frame } = await studioPage('/studio/materials/card', 'change the catalogue')
	const { material: wanted, form } = await searchParams
	const row = (await listMaterials(who)).find(({ material }) => material.id === first(wanted))
	if (wanted !== undefined && row === undefined) hide(who)
	const { typed: tried, errors } = await attemptFor(who, form)
	const unit = (await readSettings(who))?.lengths ?? 'in'
	const typed = { ...savedFields(row), ...traitText(row?.trait ?? null, unit), ...tried }
	const field = (name: keyof typeof labels, more = {}) => (
		<TextField name={name} label={labels[name]} value={one(typed, name)} error={errors[name]} {...more} />
	)
	return (
		<StudioFrame {...frame} here="Materials">
			<h1 className="text-4xl font-extrabold tracking-tight">{row?.material.name ?? 'Add a material'}</h1>
			<form key={String(form)} action={saveMaterial} className="max-w-xl" noValidate>
				<ErrorSummary errors={errors} labels={{ ...labels, ...traitLabels }} />
				<input type="hidden" name="once" value={v7()} />
				<input type="hidden" name="material" value={row?.material.id ?? ''} />
				{field('name')}
				<div className="grid gap-x-6 sm:grid-cols-2">
					{choices.map(([name, label, values]) => (
						<ChoiceField
							key={name}
							name={name}
							label={label}
							value={one(typed, name) || values[0]}
							choices={values.map((value) => ({ value, label: value }))}
							error={errors[name]}
						/>
					))}
				</div>
				{field('piecesPerUnit', {
					hint: 'Usable tips in a kg; 1 for what is counted singly.',
					inputMode: 'decimal',
				})}
				{field('hex', { type: 'color' })}
				<Traits typed={typed} errors={errors} unit={unit} />
				<fieldset className="mt-6">
					<legend className="text-lg font-bold">Hazards, from a published list</legend>
					<TickField
						name="isPoisonousToPeople"
						label="poisonous to people"
						isTicked={one(typed, 'isPoisonousToPeople') === 'on'}
					/>
					<TickField
						name="isPoisonousToPets"
						label="poisonous to pets"
						isTicked={one(typed, 'isPoisonousToPets') === 'on'}
					/>
					<TickField name="hasSmallParts" label="small parts" isTicked={one(typed, 'hasSmallParts') === 'on'} />
				</fieldset>
				<fieldset className="mt-6">
					<legend className="text-lg font-bold">The pack</legend>
					{field('supplier')}
					{field('size', { inputMode: 'decimal' })}
					{field('price', { inputMode: 'decimal' })}
					{field('freightPercent', { inputMode: 'decimal' })}
				</fieldset>
				<button type="submit" className="act first mt-8">
					Save the material
				</button>
			</form>
		</StudioFrame>
	)
}
