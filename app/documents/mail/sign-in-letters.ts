import { capital } from '@/lib/format/words'
import type { Filled } from './letters'

export function signInLetter(code: string): Filled {
	return {
		subject: 'Your link to sign in',
		paragraphs: [
			'You asked for a link to sign in. It works once, for ten minutes. Or type this code in the window where you asked:',
		],
		code: `${code.slice(0, 4)} ${code.slice(4)}`,
		label: 'Sign in',
	}
}

const when = (moment: string) => ['When', `${moment}, by the studio’s clock`] as const

/** To whoever signed in, of a browser that they had not used before. */
export function newDeviceLetter({ device, moment }: { readonly device: string; readonly moment: string }): Filled {
	return {
		subject: 'You signed in with another browser',
		paragraphs: [
			'Your door was opened with a browser that you had not used for it before. Was it you? Then there is nothing to do.',
			'If not: see where you are signed in, end that one or sign out everywhere, and answer this mail, so that we know. Nobody comes in without a mail to you: look after your mailbox too.',
		],
		rows: [['Browser', capital(device)], when(moment)],
		label: 'See where you are signed in',
	}
}

/** To the address that is a person's no more; it does not say which is now. */
export function addressChangedLetter({ moment }: { readonly moment: string }): Filled {
	return {
		subject: 'Your mail address was changed',
		paragraphs: [
			'We write to you at another address from now on. This one opens no door any more: links that we sent to it are void, and every browser was signed out. To sign in, ask for a link with the new address.',
			'Did you not ask for this? Answer this mail or ring us now, and we put it right. If you never had to do with us, there is nothing to do.',
		],
		rows: [when(moment)],
		label: 'Go to the site',
	}
}
