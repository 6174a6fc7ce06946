import { capital, list } from '../../format/words'
import type { Hex } from '../../units/hex'
import { lostUnder } from '../losses'
import { nounOf, oklchOf } from '../name-of'
import type { Desk, Target } from './desk'
import type { Findings, Seen } from './judge'
import type { Chip } from './palette'

/** As long as a chip's line may be (`colourSchema` of the draft). */
const mostLetters = 60

function shade(chip: Hex, target: Hex): string {
	const lighter = oklchOf(chip).l - oklchOf(target).l
	if (Math.abs(lighter) < 0.08) return ''
	return lighter > 0 ? ', lighter' : ', darker'
}

/** "echoes your door brass", "echoes the plum of your awning, lighter". */
export function echoWords({ hex }: Chip, { name, hex: from, isInside }: Target): string {
	const noun = nounOf(from)
	const your = `your ${name}${isInside ? ' inside' : ''}`
	const plain = `echoes ${your}`
	const full = name.includes(noun) ? plain : `echoes the ${noun} of ${your}`
	const tries = [`${full}${shade(hex, from)}`, full, plain]
	return tries.find(({ length }) => length <= mostLetters) ?? 'echoes the building'
}

const lower = ({ chip }: Seen): string => chip.name.toLowerCase()

function echoSentences(all: readonly Seen[], { targets }: Desk): string[] {
	if (targets.length === 0) return ['No colour of the building is known yet: there is nothing to echo.']
	const echoing = all.filter(({ echo }) => echo !== null)
	if (echoing.length === 0) return ['Nothing in it echoes the building.']
	return echoing.map(({ chip, echo }) => {
		if (echo === null) return ''
		const close = echo.difference <= 5 ? 'is very near' : 'echoes'
		return `${capital(chip.name)} ${close} your ${echo.target.name}${echo.target.isInside ? ' inside' : ''}.`
	})
}

function topSentence(top: Seen | null, { ask: { wall } }: Desk): string {
	if (top === null) return 'No stem for the middle has any of these colours.'
	const [stem] = top.makers.filter(({ material }) => material.role === 'thriller')
	const called = capital(stem?.material.name ?? top.chip.name)
	if (top.fromWall < lostUnder) return `${called} would be lost against the ${wall.kind}.`
	return `${called} stands out from the ${wall.kind}.`
}

function greensSentence([lead]: readonly Seen[], clear: number, { greens }: Desk): string[] {
	if (lead === undefined || greens.length === 0) return []
	const [called, count] = [capital(lead.chip.name), greens.length]
	const lost = Math.round((1 - clear) * count)
	if (lost === 0) return [`${called} shows against every green of the month.`]
	if (lost === count) return [`${called} would be lost in every green of the month.`]
	return [`${called} would be lost in ${lost} of the ${count} greens of the month: choose the others.`]
}

function spreadSentence(all: readonly Seen[], spread: number): string {
	const byLight = all.toSorted((a, b) => a.lightness - b.lightness)
	const [darkest, lightest] = [byLight.at(0), byLight.at(-1)]
	if (darkest === undefined || lightest === undefined || darkest === lightest)
		return 'One colour alone has nothing beside it.'
	if (spread < 0.4) return 'Its colours are about as light as each other: from across the street they run together.'
	return `It runs from ${lower(darkest)} to ${lower(lightest)}.`
}

function stockSentence(all: readonly Seen[]): string {
	const held = all.filter(({ makers }) => makers.some(({ material }) => material.inStock > 0))
	if (held.length === 0) return 'Storage holds nothing for it.'
	return `Storage holds something ${held.length === all.length ? 'of every colour' : `for ${list(held.map(lower))}`}.`
}

function makerSentences(all: readonly Seen[]): string[] {
	const without = all.filter(({ makers }) => makers.length === 0)
	return without.map(({ chip }) => `Nothing that can be had that month comes near ${chip.name.toLowerCase()}.`)
}

/** The score in sentences, in the order in which a designer would say them. */
export function wordsOf({ all, top, clear, parts }: Findings, desk: Desk): string[] {
	if (all.length === 0) return ['It has no colours yet.']
	return [
		...echoSentences(all, desk),
		topSentence(top, desk),
		...greensSentence(all, clear, desk),
		spreadSentence(all, parts.spread),
		stockSentence(all),
		...makerSentences(all),
	]
}
