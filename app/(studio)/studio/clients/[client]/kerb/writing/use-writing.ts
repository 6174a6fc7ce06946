import { type RefObject, useEffect, useRef, useState } from 'react'
import type { LengthUnit } from '@/lib/format/length'
import { kerbParts } from '@/lib/forms/places/kerb-fields'
import { kerbForm } from '@/lib/forms/places/kerb-form'
import { type FieldErrors, read } from '@/lib/forms/read'
import { formText } from '../../container/form-text'
import type { Known } from '../boxes/place-boxes'
import type { Entry, Fields } from '../kept/entry'
import { dropPhoto, entriesOf, letGo, photoOf, putEntry, putPhoto } from '../kept/store'
import { isTouched, likeAnother, numbersIn, titleOf, withoutContainer } from './fields'

/** What a form begins with. */
type Start = { readonly id: string; readonly fields: Fields; readonly errors: FieldErrors; readonly at: number }
export type Of = { readonly person: string; readonly client: string; readonly clientName: string }

type Props = {
	readonly form: RefObject<HTMLFormElement | null>
	readonly of: Of
	readonly known: readonly Known[]
	readonly unit: LengthUnit
	readonly first: Omit<Start, 'at'>
	/** What a new form begins with. */
	readonly blank: Fields
	readonly onLost: () => void
}

/** What is being written down: kept in this browser at every change, read as the studio will read it before it goes. */
export function useWriting({ form, of, known, unit, first, blank, onLost }: Props) {
	const [start, setStart] = useState<Start>({ ...first, at: 0 })
	const [now, setNow] = useState(first.fields)
	const [numbers, setNumbers] = useState(numbersIn(first.fields))
	const [photo, setPhoto] = useState<Blob | null>(null)
	const [isWriting, setIsWriting] = useState(false)
	const at = useRef(0)

	const keep = (fields: Fields, state: Entry['state'] = 'being written') => {
		if (at.current === 0) at.current = Date.now()
		const title = titleOf(fields, known)
		return putEntry({ ...of, id: start.id, title, state, fields, errors: {}, at: at.current }).catch(onLost)
	}
	const change = (fields: Fields) => {
		setNow(fields)
		setIsWriting(true)
		return keep(fields)
	}
	const typed = () => (form.current === null ? now : formText(form.current))
	const begin = (next: Start, kept: Blob | null) => {
		at.current = next.at
		setStart(next)
		setNow(next.fields)
		setNumbers(numbersIn(next.fields))
		setPhoto(kept)
		setIsWriting(next.at !== 0)
	}
	/** Takes up again what was kept; what stands in the form stays kept beside it. */
	const take = async (entry: Entry) => begin(entry, await photoOf(entry.id))
	const anew = () => {
		const { place = '' } = typed()
		begin({ id: crypto.randomUUID(), fields: { ...blank, place }, errors: {}, at: 0 }, null)
	}

	const add = (isSame: boolean) => {
		const [fields, last] = [typed(), numbers.at(-1) ?? 0]
		const more = isSame ? likeAnother(fields, last, last + 1) : {}
		setStart({ ...start, fields: { ...withoutContainer(start.fields, last + 1), ...more } })
		setNumbers([...numbers, last + 1])
		return change({ ...fields, ...more, [`container.${last + 1}.name`]: '' })
	}
	const remove = (number: number) => {
		setNumbers(numbers.filter((each) => each !== number))
		return change(withoutContainer(typed(), number))
	}
	const takePhoto = async (next: Blob | null) => {
		setPhoto(next)
		await change(typed())
		await (next === null ? dropPhoto(start.id) : putPhoto(start.id, next)).catch(onLost)
	}
	/** Lets go of what is written. */
	const discard = async () => {
		await letGo(start.id).catch(onLost)
		anew()
	}
	/** Hands over what is written, to be sent; false where something is wrong with it, which is then said. */
	const handOver = async (): Promise<boolean> => {
		const fields = typed()
		const said = read(kerbForm(unit), kerbParts({ ...fields, once: start.id }))
		if (!said.ok) {
			setNow(fields)
			setStart({ ...start, errors: said.errors })
			return false
		}
		await keep(fields, 'waiting')
		anew()
		return true
	}

	const takeUp = async () => {
		const mine = (await entriesOf(of.person)).filter(({ client }) => client === of.client)
		const last = mine.findLast(({ state }) => state === 'being written')
		if (last !== undefined) await take(last)
	}
	/** Once, when the page's scripts come. */
	const come = useRef(() => {
		const isFilled = form.current !== null && isTouched(form.current)
		if (isFilled || Object.keys(first.errors).length > 0) void change(typed())
		else takeUp().catch(onLost)
	})
	useEffect(() => come.current(), [])

	return {
		discard,
		start,
		now,
		numbers,
		photo,
		isWriting,
		follow: () => change(typed()),
		add,
		remove,
		take,
		takePhoto,
		handOver,
	}
}
