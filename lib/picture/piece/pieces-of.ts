import type { Form } from '../../recipe/look'
import type { Dice, DrawPiece, Piece } from '../piece'
import type { SceneLine } from '../scene'
import { berries } from './accents/berries'
import { cluster } from './accents/cluster'
import { cone } from './accents/cone'
import { globe } from './accents/globe'
import { pod } from './accents/pod'
import { pumpkin } from './accents/pumpkin'
import { ribbon } from './accents/ribbon'
import { seedHead } from './accents/seed-head'
import { broadLeaf } from './greens/broad-leaf'
import { flatFan } from './greens/flat-fan'
import { longNeedle } from './greens/long-needle'
import { scaleLeaf } from './greens/scale-leaf'
import { shortNeedle } from './greens/short-needle'
import { smallLeaf } from './greens/small-leaf'
import { trailing } from './greens/trailing'
import { bulbFlowers } from './live/bulb-flowers'
import { daisyFlowers } from './live/daisy-flowers'
import { fern } from './live/fern'
import { foliage } from './live/foliage'
import { lights } from './live/lights'
import { rosette } from './live/rosette'
import { roundFlowers } from './live/round-flowers'
import { archingStems } from './stems/arching-stems'
import { evergreenTop } from './stems/evergreen-top'
import { flowerSpike } from './stems/flower-spike'
import { grass } from './stems/grass'
import { logs } from './stems/logs'
import { plume } from './stems/plume'
import { straightStems } from './stems/straight-stems'
import { swordLeaves } from './stems/sword-leaves'
import { twistingStems } from './stems/twisting-stems'

const drawers: Record<Form, DrawPiece> = {
	'straight stems': straightStems,
	'twisting stems': twistingStems,
	'arching stems': archingStems,
	logs,
	'evergreen top': evergreenTop,
	grass,
	'sword leaves': swordLeaves,
	'flower spike': flowerSpike,
	'flat fan': flatFan,
	'long needle': longNeedle,
	'short needle': shortNeedle,
	'scale leaf': scaleLeaf,
	'broad leaf': broadLeaf,
	'small leaf': smallLeaf,
	trailing,
	berries,
	cone,
	pod,
	'seed head': seedHead,
	plume,
	globe,
	cluster,
	ribbon,
	pumpkin,
	'round flowers': roundFlowers,
	'daisy flowers': daisyFlowers,
	'bulb flowers': bulbFlowers,
	rosette,
	foliage,
	fern,
	lights,
	unseen: () => [],
}

/** Two to four variants of a piece of the line, the same every time from the same dice; none of what is not seen. */
export const piecesOf = (line: SceneLine, dice: Dice): readonly Piece[] => drawers[line.form](line, dice)
