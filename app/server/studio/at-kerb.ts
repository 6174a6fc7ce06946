import 'server-only'
import { addAtKerb } from '@/db/clients/places/add-at-kerb'
import { readSettings } from '@/db/studio/studio'
import type { Denied } from '@/db/viewer'
import type { Viewer } from '@/lib/access/viewer'
import { nameOf } from '@/lib/colour/name-of'
import { kerbParts } from '@/lib/forms/places/kerb-fields'
import { kerbForm, wallUnseen } from '@/lib/forms/places/kerb-form'
import { type FieldErrors, read, type Typed, typed } from '@/lib/forms/read'
import { SentBefore } from '@/lib/record/sent-before'
import type { ClientId, PlaceId } from '@/lib/units/id'
import { type Looked, lookAtPhoto } from '../picture/photo'
import { stamp } from '../start/clock'

/** What became of what was written down: kept now, kept before, wrong, not theirs, or not theirs who is signed in now. */
export type Went =
	| { readonly kept: PlaceId }
	| { readonly kept: 'before' | 'not theirs' }
	| { readonly errors: FieldErrors }
	| Denied

/** The boxes of a form, its photo apart from them. */
export function kerbSent(form: FormData): { readonly fields: Typed; readonly photo: File | null } {
	const { photo: _, ...fields } = typed(form)
	const photo = form.get('photo')
	return { fields, photo: photo instanceof File && photo.size > 0 ? photo : null }
}

const none: Looked = { ok: true, colours: [], preview: '', says: '' }
const lookAt = async (photo: File | null) =>
	photo === null ? none : lookAtPhoto(new Uint8Array(await photo.arrayBuffer()), null)

/** Keeps what was written down at the kerb; of its photo nothing but the colours. */
export async function writeDown(
	who: Viewer,
	client: ClientId,
	{ fields, photo }: ReturnType<typeof kerbSent>,
): Promise<Went> {
	const unit = (await readSettings(who))?.lengths ?? 'in'
	const filled = read(kerbForm(unit), kerbParts(fields))
	if (!filled.ok) return { errors: filled.errors }
	const { once, by, place, new: made, container } = filled.value
	if (by !== undefined && (who.is !== 'staff' || who.person !== by)) return { kept: 'not theirs' }
	const looked = await lookAt(photo)
	if (!looked.ok) return { errors: { photo: looked.says } }
	const [largest] = looked.colours
	const wallHex = made?.wallHex === wallUnseen && largest ? largest.hex : (made?.wallHex ?? wallUnseen)
	const where = made === undefined ? place : { ...made, wallHex }
	if (where === null) throw new Error('writeDown: a form without a place was taken')
	const colours = looked.colours.map(({ hex, spot }) => ({ name: nameOf(hex), hex, spot, side: 'outside' as const }))
	try {
		const added = await addAtKerb(who, { client, place: where, containers: container, colours }, stamp(once))
		return added.ok ? { kept: added.place } : added
	} catch (error) {
		if (error instanceof SentBefore) return { kept: 'before' }
		throw error
	}
}
