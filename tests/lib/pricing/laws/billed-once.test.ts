import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Job } from '@/lib/pricing/job'
import { price } from '@/lib/pricing/price'
import type { Part, PriceList } from '@/lib/pricing/price-list'
import { quote } from '@/lib/pricing/quote/quote'
import { sum } from '@/lib/units/cents'
import { chosenJobs, jobs, runs } from '../arbitrary'
import { words } from '../sample'

const amounts = (parts: readonly { readonly cents: Part['cents'] }[]) => sum(parts.map((part) => part.cents))

describe('nothing is billed twice, and nothing is forgotten', () => {
	/** How often each thing of the job stands in the price list; a fixed season's own things must not. */
	const timesListed = ({ visits, containers, extras, agreement }: Job, { parts }: PriceList) => {
		const named = new Set<string>(agreement.is === 'fixed' ? agreement.containers : [])
		const doors = new Set(containers.filter(({ id }) => named.has(id)).map(({ place }) => place))
		const count = (is: Part['is'], of: (part: Part) => boolean) =>
			parts.filter((part) => part.is === is && of(part)).length
		return [
			...containers.map(({ id }) => ({
				isPaid: named.has(id),
				times: count('container', (part) => 'container' in part && part.container === id),
			})),
			...visits.map(({ place }) => ({
				isPaid: doors.has(place),
				times: count('travel', (part) => part.place === place),
			})),
			...extras.map(({ key }) => ({
				isPaid: false,
				times: count('extra', (part) => 'extra' in part && part.extra === key),
			})),
			{ isPaid: agreement.is === 'fixed', times: count('design', () => true) },
		]
	}

	test('each container, visit, extra and the design is paid by the fixed price or is one line of its own', () => {
		fc.assert(
			fc.property(jobs, (job) => {
				for (const { isPaid, times } of timesListed(job, price(job, words).list)) expect(times).toBe(isPaid ? 0 : 1)
			}),
			runs,
		)
	})

	test('the charges of a container that the fixed price names are in it', () => {
		fc.assert(
			fc.property(jobs, (job) => {
				const { agreement } = job
				fc.pre(agreement.is === 'fixed')
				for (const part of price(job, words).list.parts)
					if ('container' in part) expect(agreement.containers).not.toContain(part.container)
			}),
			runs,
		)
	})

	test('a fixed season is asked for to the cent, and so is its supplement', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { agreement, supplementCents } = job
				fc.pre(agreement.is === 'fixed')
				const { lines } = quote(price(job, words).list, choice)
				const of = (is: Part['is']) => amounts(lines.filter((line) => line.is === is))
				expect(of('season')).toBe(agreement.cents)
				expect(of('supplement')).toBe(supplementCents)
				expect(amounts(lines.filter(({ bill }) => bill === 'agreement'))).toBe(agreement.cents)
			}),
			runs,
		)
	})

	test('every cent is billed by the agreement or apart, and the two make the total', () => {
		fc.assert(
			fc.property(chosenJobs, ({ job, choice }) => {
				const { lines, tax, due, totalCents } = quote(price(job, words).list, choice)
				const of = (bill: Part['bill']) => amounts([...lines, ...tax].filter((each) => each.bill === bill))
				expect(of('agreement') + of('apart')).toBe(totalCents)
				expect(amounts(due.filter(({ when }) => when.is === 'by agreement'))).toBe(of('agreement'))
				if (job.agreement.is === 'none') expect(of('agreement')).toBe(0)
				for (const { is, bill } of lines) if (is === 'extra' || is === 'supplement') expect(bill).toBe('apart')
			}),
			runs,
		)
	})
})
