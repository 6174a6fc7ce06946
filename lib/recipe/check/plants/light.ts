import type { Light as Lit } from '../../../container/card'
import { capital, list } from '../../../format/words'
import { finding } from '../finding'
import type { Check } from '../setting'

const order: readonly Lit[] = ['sun', 'part', 'shade']
const words: Record<Lit, string> = { sun: 'sun', part: 'part shade', shade: 'shade' }

const stepsApart = (a: Lit, b: Lit) => Math.abs(order.indexOf(a) - order.indexOf(b))

/** Live plants in a light that they do not want; cut stems do not mind. */
export const light: Check = (lines, { pot }) =>
	lines
		.filter(({ material: { kind, wants } }) => kind === 'live' && wants.length > 0 && !wants.includes(pot.light))
		.map(({ material: { id, name, wants } }) => {
			const apart = Math.min(...wants.map((want) => stepsApart(want, pot.light)))
			const wanted = list(
				order.filter((each) => wants.includes(each)).map((each) => words[each]),
				'or',
			)
			const says = `${capital(name)} will want ${wanted}, and this pot stands in ${words[pot.light]}.`
			const weight = apart > 1 ? 'look again' : 'caution'
			return finding(`light/${id}`, weight, says, `Take a plant for ${words[pot.light]}.`)
		})
