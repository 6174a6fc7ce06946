import { isRound, type Vessel } from './card'

/** Inner width and depth of a vessel at `aboveFloorCm`, tapering evenly from floor to rim. */
type Taper = {
	readonly widthCm: (aboveFloorCm: number) => number
	readonly depthCm: (aboveFloorCm: number) => number
}

const innerHeight = ({ heightCm, wallCm }: Vessel) => heightCm - wallCm

function taper(vessel: Vessel): Taper {
	const { topCm, topDepthCm, bottomCm, bottomDepthCm, wallCm } = vessel
	const along = (top: number, bottom: number) => (z: number) =>
		bottom + ((top - bottom) * z) / innerHeight(vessel) - 2 * wallCm
	return {
		widthCm: along(topCm, bottomCm),
		depthCm: along(topDepthCm ?? topCm, bottomDepthCm ?? bottomCm),
	}
}

/** Between two levels of an evenly tapering vessel: V = h/6 · (A₁ + 4·A½ + A₂), exact for a prismatoid and a frustum. */
function prismatoidCm3(area: (z: number) => number, from: number, to: number): number {
	return ((to - from) / 6) * (area(from) + 4 * area((from + to) / 2) + area(to))
}

/** Below `depth` in a bowl that is a cap of a sphere, `rim` its inner radius at the height `h`: π·d²·(3R − d)/3. */
function capCm3(rim: number, h: number, depth: number): number {
	const radius = (rim * rim + h * h) / (2 * h)
	return (Math.PI * depth * depth * (3 * radius - depth)) / 3
}

/** Heights above the inner floor between which the soil lies, in cm. */
function soilLevels(vessel: Vessel): { from: number; to: number } {
	const to = innerHeight(vessel) - vessel.headspaceCm
	return {
		from: vessel.soilDepthCm === null ? 0 : Math.max(0, to - vessel.soilDepthCm),
		to,
	}
}

const areaAt =
	({ widthCm, depthCm }: Taper, round: boolean) =>
	(z: number) => {
		const area = widthCm(z) * depthCm(z)
		return round ? (Math.PI / 4) * area : area
	}

/** Inner area at the rim, in whole cm². */
export function openingCm2(vessel: Vessel): number {
	return Math.round(areaAt(taper(vessel), isRound(vessel.shape))(innerHeight(vessel)))
}

/** Soil that the vessel holds between its (false) bottom and the headspace, in litres to one decimal. */
export function soilLitres(vessel: Vessel): number {
	const { from, to } = soilLevels(vessel)
	const inner = taper(vessel)
	const rim = inner.widthCm(innerHeight(vessel)) / 2
	const cm3 =
		vessel.shape === 'bowl'
			? capCm3(rim, innerHeight(vessel), to) - capCm3(rim, innerHeight(vessel), from)
			: prismatoidCm3(areaAt(inner, isRound(vessel.shape)), from, to)
	return Math.round(cm3 / 100) / 10
}
