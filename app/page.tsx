import { redirect } from 'next/navigation'
import { viewer } from './server/sign-in/session'

/** The start leads everybody to their own door. */
export default async function Start() {
	const who = await viewer()
	if (who.is === 'staff') redirect(who.role === 'designer' ? '/studio' : '/studio/install')
	redirect(who.is === 'contact' ? '/home' : '/sign-in')
}
