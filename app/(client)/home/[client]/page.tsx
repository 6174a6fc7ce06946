import type { Metadata } from 'next'
import { idIn, signedIn } from '@/app/server/pages'
import { hide } from '@/app/server/refusal'
import { stamp } from '@/app/server/start/clock'
import { ClientFrame } from '@/app/ui/client-frame'
import { agreementsOf } from '@/db/agreements/of-client'
import { doors, type HomeLine, readHome } from '@/db/clients/home'
import { visitsOf } from '@/db/clients/visits/visits-of'
import { readAccount } from '@/db/money/read-account'
import { studioName, whoIs } from '@/db/studio/studio'
import { decide } from '@/lib/access/decide'
import type { AgreementLine } from '@/lib/agreement/signing/page'
import { moneyFormat } from '@/lib/format/money'
import { Agreements, ToSign } from './agreements'
import { History } from './history'
import { Asked, Next, Season } from './lines'
import { Owed } from './owed'

export const metadata: Metadata = { title: 'Your door' }

const byWindow = (a: HomeLine, b: HomeLine) => a.window.from.localeCompare(b.window.from)
const needsName = ({ state }: AgreementLine) => state.is === 'to be signed'
const needsAnswer = ({ state }: HomeLine) => state === 'waiting for an answer'

/** What needs an answer, then what comes next and what was. */
export default async function Home({ params }: PageProps<'/home/[client]'>) {
	const { client: text } = await params
	const who = await signedIn(`/home/${text}`)
	const home = await readHome(who, idIn<'client'>(text), stamp())
	if (home === undefined) hide(who)
	const history = await visitsOf(who, idIn<'client'>(text), stamp())
	const agreements = await agreementsOf(who, idIn<'client'>(text), stamp())
	const toSign = agreements.filter(needsName)
	const account = await readAccount(who, idIn<'client'>(text), stamp())
	const owes = account.ok && account.account.openCents > 0
	const asked = home.lines.filter(needsAnswer)
	const next = home.lines.filter(({ state }) => state === 'approved').toSorted(byWindow)
	const others = home.lines.filter((line) => !needsAnswer(line))
	const mayAnswer = decide(who, 'answer the proposal', idIn<'client'>(text)) === 'may'
	const money = moneyFormat(home.currency)
	const hasMore = (await doors(who)).length > 1
	return (
		<ClientFrame studio={(await studioName(who)) ?? ''} who={await whoIs(who)} season={(asked[0] ?? others[0])?.season}>
			<div className="mx-auto max-w-3xl px-5 pt-[6vh]">
				<h1 className="text-5xl tracking-tight">{home.name}</h1>
				{hasMore && (
					<p className="mt-2">
						<a href="/home">Another door</a>
					</p>
				)}
				{toSign.map((line) => (
					<ToSign key={line.agreement} line={line} today={home.today} maySign={mayAnswer} />
				))}
				{asked.map((line) => (
					<Asked key={line.proposal} line={line} today={home.today} money={money} mayAnswer={mayAnswer} />
				))}
				{asked.length + toSign.length === 0 && !owes && <p className="mt-6 text-lg">Nothing waits for you.</p>}
				{next.map((line) => (
					<Next key={line.proposal} line={line} />
				))}
				{account.ok && (
					<Owed client={text} page={{ ...account, bills: account.bills.filter(({ isWanting }) => !isWanting) }} />
				)}
				{history && <History client={text} visits={history.visits} />}
				{others.length > 0 && (
					<section className="mt-14" aria-labelledby="seasons">
						<h2 id="seasons" className="text-2xl">
							Seasons
						</h2>
						<ul className="mt-3 border-t-2 border-ink">
							{others.map((line) => (
								<Season key={line.proposal} line={line} money={money} />
							))}
						</ul>
					</section>
				)}
				<Agreements lines={agreements.filter((line) => !needsName(line))} />
			</div>
		</ClientFrame>
	)
}
