import 'server-only'
import { recordPaper } from '@/db/agreements/studio/paper'
import { agreementDesk } from '@/db/agreements/studio/read-desk'
import { decide } from '@/lib/access/decide'
import { paperForm } from '@/lib/agreement/studio/form/act-forms'
import { studioTold } from '@/lib/agreement/studio/told'
import { type FieldErrors, read, typed } from '@/lib/forms/read'
import { id, isId } from '@/lib/units/id'
import { wakePapers } from '../answers/agreement/make-papers'
import { backToForm } from '../attempt'
import { wakeSender } from '../mail/sender'
import { inTurn, isPhoto, unreadable, upright } from '../picture/photo'
import { refuse, seeOther, unclear } from '../respond'
import { viewer } from '../sign-in/session'
import { stamp } from '../start/clock'
import { formData } from '../visits/photos-form'
import { isDenied } from './studio-action'

/** Wide enough to read small print on a page of paper. */
const scanSide = 2400

/** Written anew as JPEG, without what the camera put beside it; undefined for what is no photo. */
async function scanOf(file: FormDataEntryValue | null): Promise<Uint8Array | undefined> {
	if (!(file instanceof File) || file.size === 0) return undefined
	const bytes = new Uint8Array(await file.arrayBuffer())
	return inTurn(async () => {
		if (!(await isPhoto(bytes))) return undefined
		return new Uint8Array(await upright(bytes, scanSide).jpeg({ quality: 80, mozjpeg: true }).toBuffer())
	}).catch(() => undefined)
}

const dayly = new Set<string>(['before it was issued', 'still to come'])

/** Who, may they, what was typed and chosen, do it, tell, go. */
export async function keepPaper(request: Request, agreementId: string): Promise<Response> {
	const who = await viewer()
	const page = `/studio/agreements/${agreementId}`
	if (who.is === 'nobody') return seeOther(`/sign-in?${new URLSearchParams({ to: page })}`)
	if (!isId(agreementId) || decide(who, 'change agreements', null) !== 'may') return refuse(request, 'hidden', who)
	const agreement = id<'agreement'>(agreementId)
	if ((await agreementDesk(who, agreement, stamp())) === undefined) return refuse(request, 'hidden', who)
	const sent = await formData(request)
	if (sent === undefined) return unclear(request, 'This is not a form of ours. Nothing was changed.')
	const { scan: _, ...fields } = typed(sent)
	const back = (errors: FieldErrors) => backToForm(who, page, { typed: fields, errors })
	const filled = read(paperForm, { ...fields, agreement })
	if (!filled.ok) return back(filled.errors)
	const scan = await scanOf(sent.get('scan'))
	if (scan === undefined) return back({ scan: unreadable.says })
	const kept = await recordPaper(who, { ...filled.value, scan }, stamp())
	if (isDenied(kept)) return refuse(request, kept.why, who)
	if (!kept.ok) return back({ [dayly.has(kept.why) ? 'signedOn' : 'form']: studioTold[kept.why] })
	wakeSender()
	wakePapers()
	return seeOther(`${page}?told=paper`)
}
