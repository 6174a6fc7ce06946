import { capital } from '../../../format/words'
import { finding } from '../finding'
import type { Check } from '../setting'

/** Plants whose trade is regulated somewhere: quarantines, invasives. */
export const regulated: Check = (lines) =>
	lines
		.filter(({ material }) => material.regulated.trim() !== '')
		.map(({ material: { id, name, regulated: why } }) => {
			const says = `${capital(name)} may not be traded everywhere: ${why.trim().replace(/\.$/, '')}.`
			return finding(
				`regulated/${id}`,
				'caution',
				says,
				'Ask the agriculture office of the state before it is bought or moved.',
			)
		})
