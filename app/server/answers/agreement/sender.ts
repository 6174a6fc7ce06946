import 'server-only'
import { isIP } from 'node:net'
import { senderOf } from '../../edge/screen'

const thisMachine = '127.0.0.1'
/** Unspecified (RFC 4291, section 2.5.2): where the proxy names no address. */
const unknown = '::'

/** The address that a signature came from. The site listens on this machine alone: what no proxy handed on came from here. */
export function senderAddress(headers: Headers): string {
	const sender = senderOf(headers)
	if (sender === 'direct') return thisMachine
	return isIP(sender) === 0 ? unknown : sender
}
