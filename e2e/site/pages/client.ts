import { type Shown, shown } from './shown'

const approved = shown('approvedApprover')
const bakery = shown('bakeryApprover')
const inn = shown('innApprover')
const threePalettes = shown('clapboardApprover')
const vet = shown('vetApprover')

/** Every page behind the client's door, in every state that the cast has it in. */
export const clientPages: readonly Shown[] = [
	bakery('home', ({ clients }) => `/home/${clients.bakery.id}`),
	shown('skippedApprover')('home, nothing waits', ({ clients }) => `/home/${clients.skipped.id}`),
	bakery('visits', ({ clients }) => `/home/${clients.bakery.id}/visits`),
	bakery('something is wrong', ({ clients }) => `/home/${clients.bakery.id}/wrong`),
	shown('installedApprover')('visits, one reported', ({ clients }) => `/home/${clients.installed.id}/visits`),
	shown('twoDoors')('doors', () => '/home'),
	bakery('where they are signed in', () => '/devices'),
	bakery('one palette', ({ proposals }) => `/proposal/${proposals.bakery}`),
	shown('bakeryViewer')('one palette, to look at', ({ proposals }) => `/proposal/${proposals.bakery}`),
	threePalettes('three palettes', ({ proposals }) => `/proposal/${proposals.clapboard}`),
	threePalettes(
		'one of three on the wall',
		({ proposals }) => `/proposal/${proposals.clapboard}?option=b&extra=lights`,
	),
	approved('approved, second revision', ({ proposals }) => `/proposal/${proposals.approved}`),
	inn('change asked for', ({ proposals }) => `/proposal/${proposals.inn}`),
	shown('chandleryApprover')('lapsed', ({ proposals }) => `/proposal/${proposals.chandlery}`),
	shown('withdrawnApprover')('taken back', ({ proposals }) => `/proposal/${proposals.withdrawn}`),
	bakery('approve', ({ proposals }) => `/proposal/${proposals.bakery}/approve?option=a&extra=lights`),
	bakery('change', ({ proposals }) => `/proposal/${proposals.bakery}/change`),
	bakery('skip', ({ proposals }) => `/proposal/${proposals.bakery}/skip`),
	approved('done, approved', ({ proposals }) => `/proposal/${proposals.approved}/done`),
	inn('done, change asked for', ({ proposals }) => `/proposal/${proposals.inn}/done`),
	shown('skippedApprover')('done, skipped', ({ proposals }) => `/proposal/${proposals.skipped}/done`),
	vet('home, an agreement to sign', ({ clients }) => `/home/${clients.vet.id}`),
	vet('agreement, to sign', ({ papers }) => `/agreement/${papers.toSign}`),
	vet('agreement, consent', ({ papers }) => `/agreement/${papers.toSign}/consent`),
	vet('agreement, decline', ({ papers }) => `/agreement/${papers.toSign}/decline`),
	bakery('agreement, signed', ({ papers }) => `/agreement/${papers.signed}`),
	bakery('agreement, done', ({ papers }) => `/agreement/${papers.signed}/done`),
	bakery('check a file', () => '/verify?hash=none'),
	approved('account', ({ clients }) => `/home/${clients.approved.id}/account`),
	bakery('account, nothing asked for', ({ clients }) => `/home/${clients.bakery.id}/account`),
	approved('invoice', ({ papers }) => `/invoice/${papers.invoice}`),
	bakery('not found', () => '/no/such/door'),
	shown('bakeryViewer')('not theirs to do', ({ proposals }) => `/proposal/${proposals.bakery}/approve`),
]
