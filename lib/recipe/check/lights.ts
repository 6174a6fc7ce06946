import { named, type Planned } from '../planned'
import { type Finding, finding } from './finding'
import type { Check, Setting } from './setting'

/** What burns three hours or more may take 80 % of its breaker (NEC 210.20(A), section number from memory). */
const continuous = 0.8
/** Holiday lighting is temporary wiring, for 90 days (NEC 590.3(B)). */
const mostDays = 90

/** Watts of the lights among the lines, as far as their cards say. */
export const wattsOf = (lines: readonly Planned[]): number =>
	lines
		.filter(({ material }) => material.kind === 'light')
		.reduce((sum, { material, count }) => sum + count * (material.watts ?? 0), 0)

export const mostWatts = ({ volts, amps }: Setting['circuit']): number => continuous * volts * amps

function endToEnd({ material: { id, name, mostEndToEnd }, count }: Planned): Finding[] {
	if (mostEndToEnd === null || count <= mostEndToEnd) return []
	const runs = Math.ceil(count / mostEndToEnd)
	const says = `${count} of ${name} are planned, and their maker lets ${mostEndToEnd} run end to end.`
	return [finding(`end to end/${id}`, 'look again', says, `Feed them in ${runs} runs, each from its own outlet.`)]
}

function load(lines: readonly Planned[], { circuit }: Setting): Finding[] {
	const watts = wattsOf(lines) + circuit.otherWatts
	const most = mostWatts(circuit)
	if (watts <= most) return []
	const says = `The lights take ${Math.round(watts)} W, and a breaker of ${circuit.amps} A at ${circuit.volts} V may carry ${Math.round(most)} W for hours.`
	return [finding('circuit', 'look again', says, 'Take some of them off, or feed them from another circuit.')]
}

function days({ daysHung }: Setting): Finding[] {
	if (daysHung === null || daysHung <= mostDays) return []
	const says = `The lights would hang ${daysHung} days; temporary wiring is for ${mostDays}.`
	return [
		finding(
			'days hung',
			'look again',
			says,
			'Hang them later, take them down sooner, or use lights listed for all the year.',
		),
	]
}

function outlet(lines: readonly Planned[], { pot }: Setting): Finding[] {
	if (pot.outletNear) return []
	const says = `No outlet is near this pot for ${named(lines)}.`
	return [
		finding('outlet', 'caution', says, 'Take lights on batteries, or have an outlet put in; no cord across a walk.'),
	]
}

/** Strings end to end, the load of the circuit, the days that they hang, and where the current comes from. */
export const lights: Check = (lines, setting) => {
	const strings = lines.filter(({ material }) => material.kind === 'light')
	if (strings.length === 0) return []
	return [...strings.flatMap(endToEnd), ...load(strings, setting), ...days(setting), ...outlet(strings, setting)]
}
