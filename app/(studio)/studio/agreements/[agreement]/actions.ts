'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { isDenied, refused, studioAction } from '@/app/server/studio/studio-action'
import { saveTerms as keepTerms } from '@/db/agreements/draft'
import { issueAgreement } from '@/db/agreements/issue'
import { endAgreement as endIt, takeBackAgreement } from '@/db/agreements/studio/end'
import { endingForm, issueForm, takeBackForm } from '@/lib/agreement/studio/form/act-forms'
import { termsLists } from '@/lib/agreement/studio/form/parts'
import { termsForm } from '@/lib/agreement/studio/form/terms-form'
import { studioTold } from '@/lib/agreement/studio/told'

const page = ({ agreement }: { agreement?: unknown }) => `/studio/agreements/${String(agreement)}`
const act = 'change agreements'

/** Keeps the terms as they were typed, whatever is still open. */
export async function saveTerms(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: termsForm, lists: termsLists, page }, async (who, { once: _, ...saving }) => {
		const saved = await keepTerms(who, saving, stamp())
		if (saved.ok) return { to: `${page(saving)}?told=saved` }
		return isDenied(saved) ? refused(saved) : { errors: { form: studioTold[saved.why] } }
	})
}

/** Issues what is saved: signed by the studio, and mailed to who may sign. */
export async function issue(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: issueForm, page }, async (who, issuing) => {
		const issued = await issueAgreement(who, issuing, stamp())
		if (isDenied(issued)) return refused(issued)
		if (issued.ok) {
			wakeSender()
			return { to: `${page(issuing)}?told=issued` }
		}
		if (issued.why !== 'not ready') return { errors: { form: studioTold[issued.why] } }
		const [first] = issued.problems
		return { errors: { [first?.at === 'signBy' ? 'signBy' : 'form']: first?.says ?? '' } }
	})
}

/** Takes back one that nobody has signed. */
export async function takeBack(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: takeBackForm, page }, async (who, taking) => {
		const taken = await takeBackAgreement(who, taking, stamp())
		if (isDenied(taken)) return refused(taken)
		if (!taken.ok) return { errors: { form: studioTold[taken.why] } }
		wakeSender()
		return { to: `${page(taking)}?told=taken` }
	})
}

/** Shows what an ending would leave, or ends it; to see it the boxes come back as they were typed. */
export async function endAgreement(form: FormData): Promise<void> {
	await studioAction(form, { act, schema: endingForm, page }, async (who, { step, ...ending }) => {
		if (step === 'see') return { errors: {} }
		const ended = await endIt(who, ending, stamp())
		if (isDenied(ended)) return refused(ended)
		if (!ended.ok) {
			const at = ended.why === 'said in days to come' ? 'saidOn' : 'on'
			return { errors: { [at]: studioTold[ended.why] } }
		}
		wakeSender()
		return { to: `${page(ending)}?told=ended` }
	})
}
