import type { Pictured, ProposalPaper } from '@/app/documents/pdf/proposal/input'
import { ProposalPdf } from '@/app/documents/pdf/proposal/proposal-pdf'
import { approvedScenes, frame } from '@/app/documents/pdf/proposal/scenes'
import { picture } from '@/lib/picture/picture'
import { jpeg } from '../picture/jpeg'
import { drawnPdf } from './drawn-pdf'

/** Pixels across: on the widest paper some 190 to the inch. */
const width = 1600
const height = Math.round(width / frame.ratio)

async function pictured(input: ProposalPaper): Promise<Pictured[]> {
	const made: Pictured[] = []
	for (const { scene, caption } of approvedScenes(input))
		made.push({ caption, jpeg: await jpeg(picture(scene, frame), width, height) })
	return made
}

/** The bytes of an approved proposal's file. @throws when the palette that was approved is not one of the offer's */
export const proposalPdf = (input: ProposalPaper): Promise<Buffer> =>
	drawnPdf(async (drawing) => ProposalPdf({ input, drawing, pictures: await pictured(input) }))
