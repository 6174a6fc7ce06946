import 'server-only'
import type { FieldErrors } from '@/lib/forms/read'
import { SentBefore } from '@/lib/record/sent-before'

const again: FieldErrors = { form: 'This form has been sent before. Nothing was changed a second time.' }

/** What `run` comes to, or the form again with what is told when its key has gone through before. */
export async function onceOnly<Went>(run: () => Promise<Went>): Promise<Went | { readonly errors: FieldErrors }> {
	try {
		return await run()
	} catch (error) {
		if (!(error instanceof SentBefore)) throw error
		return { errors: again }
	}
}
