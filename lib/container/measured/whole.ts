import { isRound, usualHeadspaceCm, usualWallCm, type Vessel, type WallMaterial } from '../card'
import { faultsOf } from '../problem'
import { type Fault, measureFaults } from './measures'

const open = ['topDepthCm', 'bottomDepthCm', 'wallCm', 'headspaceCm'] as const
type Open = (typeof open)[number]

/** A vessel as it was measured: what was not is null. */
export type Measured = Omit<Vessel, Open> & { readonly wall: WallMaterial } & { readonly [Name in Open]: number | null }

/** As far as a float can be trusted, and further than any tape. */
const toFive = (cm: number) => Math.round(cm * 100_000) / 100_000

/** What is usual where nothing was measured; a box narrows from front to back as it does along its front. */
export function whole<T extends Measured>(of: T): T & Vessel {
	const { shape, topCm, bottomCm, topDepthCm, bottomDepthCm } = of
	const deep = topDepthCm ?? topCm
	const narrows = topCm > 0 ? bottomCm / topCm : 1
	const depths = isRound(shape)
		? { topDepthCm: null, bottomDepthCm: null }
		: { topDepthCm: deep, bottomDepthCm: bottomDepthCm ?? toFive(deep * narrows) }
	return {
		...of,
		...depths,
		wallCm: of.wallCm ?? usualWallCm[of.wall],
		headspaceCm: of.headspaceCm ?? usualHeadspaceCm,
	}
}

/** What is wrong with it: first with what was measured, then with the whole. */
export function faultsOfMeasured(of: Measured, sillToGlassCm: number | null): Fault[] {
	const measured = measureFaults({ ...of, sillToGlassCm })
	return measured.length > 0 ? measured : faultsOf(whole(of), sillToGlassCm)
}
