import type { Refusal } from '../state'
import { signatureTold } from '../told'

/** Why a step on the way to a signature is refused: where the agreement stands, or a step that comes before. */
export type SigningRefusal =
	| Refusal
	| 'not opened'
	| 'other words'
	| 'not agreed to'
	| 'proof is old'
	| 'billed twice'
	| 'sent before'
	| 'erased'

const told: Readonly<Record<SigningRefusal, string>> = {
	...signatureTold,
	'not opened': 'Open the agreement first, here or as a PDF: agreeing rests on your having read it on this device.',
	'other words': 'The words about records on a screen have changed since you read them. Read them again below.',
	'not agreed to': 'One step comes before signing: agree to have the agreement on a screen, or ask us for paper.',
	'proof is old': 'You signed in more than a day ago. Before you sign, show once more that your mailbox is yours.',
	'billed twice':
		'One of these seasons is priced already, by another agreement with us or by a proposal that was approved, so signing would charge you twice. Nothing was signed. Answer any mail of ours and we put it right.',
	'sent before': 'This form has been sent before. Nothing was changed a second time.',
	erased: 'What stood here has been erased. Nothing was signed.',
}

export const isSigningRefusal = (why: string): why is SigningRefusal => Object.hasOwn(told, why)
export const signingTold = (why: SigningRefusal): string => told[why]
