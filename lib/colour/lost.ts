import { capital } from '../format/words'
import { type Finding, finding } from '../recipe/check/finding'
import type { Planned } from '../recipe/planned'
import type { Hex } from '../units/hex'
import { type Behind, type Loss, losses } from './losses'
import { oklchOf } from './name-of'

/** Which way there is more room to stand out from a colour. */
const other = (hex: Hex): string => (oklchOf(hex).l < 0.6 ? 'a lighter one' : 'a darker one')

const orElse: Readonly<Record<Loss['in'], string>> = {
	wall: '',
	door: ', or stand the container clear of the door',
	greens: ', or other greens',
}

function said({ material: { id, name, hex }, in: ground, called }: Loss): Finding {
	const where = ground === 'greens' ? `in ${called}` : `against ${called}`
	const says = `${capital(name)} would be lost ${where}: their colours are too near each other.`
	return finding(`lost/${id}/${ground}`, 'look again', says, `Take ${other(hex)} or another colour${orElse[ground]}.`)
}

/** What would be lost against the wall, the door or the recipe's own greens; one finding for each thing and what it is lost in. */
export const lost = (lines: readonly Planned[], behind: Behind): Finding[] => losses(lines, behind).map(said)
