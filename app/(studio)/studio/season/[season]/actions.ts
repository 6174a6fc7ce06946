'use server'
import { wakeSender } from '@/app/server/mail/sender'
import { stamp } from '@/app/server/start/clock'
import { refused, studioAction } from '@/app/server/studio/studio-action'
import { remindAll as remindEverybody } from '@/db/studio/remind-all'
import { remindAllForm } from '@/lib/forms/season-forms'

/** Reminds all who owe an answer; whoever was reminded within two days only when it is ticked. */
export async function remindAll(form: FormData): Promise<void> {
	const page = ({ season }: { season?: unknown }) => `/studio/season/${String(season)}`
	await studioAction(form, { act: 'remind', schema: remindAllForm, page }, async (who, reminding) => {
		const told = await remindEverybody(who, reminding, stamp())
		if (!told.ok) return refused(told)
		if (told.reminded > 0) wakeSender()
		return { to: `/studio/season/${reminding.season}?all=${told.reminded}.${told.lately}` }
	})
}
