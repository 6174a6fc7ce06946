import sharp from 'sharp'
import type { Incoming } from '@/db/clients/visits/photos/with-photos'
import { readPicture } from '@/db/proposals/pictures/read-picture'
import type { Stamp } from '@/db/stamp'
import type { Viewer } from '@/lib/access/viewer'
import { cuts } from '@/lib/forms/pictures/picture-address'
import { picture } from '@/lib/picture/picture'
import type { ProposalId } from '@/lib/units/id'
import type { CastPhoto } from '../cast/visits'

const quality = 78
const sides = { large: 1200, small: 480 }

type Made = Omit<Incoming, 'side'>

async function developed(svg: string): Promise<Made> {
	const large = await sharp(Buffer.from(svg))
		.resize(sides.large, sides.large, { fit: 'inside' })
		.flatten({ background: '#ffffff' })
		.jpeg({ quality })
		.toBuffer({ resolveWithObject: true })
	const small = await sharp(large.data).resize(sides.small, sides.small, { fit: 'inside' }).jpeg({ quality }).toBuffer()
	return { large: large.data, small, width: large.info.width, height: large.info.height }
}

/** The play is given many times by tests: the same drawing is developed once. */
const known = new Map<string, Promise<Made>>()

/** A drawing of a client's design, kept as the photo that it stands in for. */
async function drawn(
	viewer: Viewer,
	proposal: ProposalId,
	{ side, of, cut, hour }: CastPhoto,
	stamp: Stamp,
): Promise<Incoming> {
	const shown = { place: '', option: null, extras: [], leftOut: [], hour, measure: 'none' } as const
	const isOfWhatStands = of === 'design'
	const scene = await readPicture(viewer, { proposal, revision: '', shown, isOfWhatStands }, stamp)
	if (scene === undefined) throw new Error(`drawn: ${proposal} has no picture`)
	const svg = picture(scene, cuts[cut])
	const made = known.get(svg) ?? developed(svg)
	known.set(svg, made)
	return { side, ...(await made) }
}

/** One after the other, so that their ids come in one order. */
export async function photosOf(
	viewer: Viewer,
	proposal: ProposalId,
	all: readonly CastPhoto[],
	stamp: Stamp,
): Promise<Incoming[]> {
	const made: Incoming[] = []
	for (const each of all) made.push(await drawn(viewer, proposal, each, stamp))
	return made
}
