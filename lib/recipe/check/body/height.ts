import { length } from '../../../format/length'
import { capital } from '../../../format/words'
import { heightBand, reachCm, standingCm } from '../../height'
import type { Planned } from '../../planned'
import { finding } from '../finding'
import type { Check, Setting } from '../setting'

const rises = (of: Planned, cm: number | null) => (cm === null ? [] : [{ name: of.material.name, cm }])
type Rise = { readonly name: string; readonly cm: number }
const tallestOf = (all: readonly Rise[]) => all.toSorted((a, b) => b.cm - a.cm)[0]

const bandWords = ({ pot, lengths }: Setting) => {
	const { lowCm, highCm } = heightBand(pot)
	return `${length(lowCm, lengths)} to ${length(highCm, lengths)}`
}

/** Nothing that stands up, too short for the pot, or a plant that outgrows it. */
export const height: Check = (lines, setting) => {
	const { pot, lengths } = setting
	const thrillers = lines.filter(({ role }) => role === 'thriller')
	if (thrillers.length === 0 && lines.length > 0) {
		const says = 'Nothing stands up in it: a pot without something tall reads as a mound.'
		return [finding('height/none', 'caution', says, 'Add a top, branches or a tall plant.')]
	}
	const { lowCm, highCm, bestCm } = heightBand(pot)
	const reach = tallestOf(thrillers.flatMap((of) => rises(of, reachCm(of.material, pot))))
	const standing = tallestOf(thrillers.flatMap((of) => rises(of, standingCm(of.material, pot))))
	if (reach !== undefined && reach.cm < lowCm) {
		const says = `${capital(reach.name)} will reach ${length(reach.cm, lengths)} above the rim, where ${bandWords(setting)} suit this pot.`
		return [
			finding(
				'height/short',
				'look again',
				says,
				`Take longer stems or something taller: ${length(bestCm, lengths)} is best.`,
			),
		]
	}
	if (standing !== undefined && standing.cm > highCm) {
		const why =
			pot.sillToGlassCm === null ? 'it would look top-heavy' : 'it would stand before the glass or look top-heavy'
		const says = `${capital(standing.name)} will reach ${length(standing.cm, lengths)} above the rim, where ${bandWords(setting)} suit this pot: ${why}.`
		return [finding('height/tall', 'caution', says, 'Take a lower plant, or a taller pot.')]
	}
	return []
}
