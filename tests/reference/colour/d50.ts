/** Lab relative to D50, as printers and the `lab()` of CSS have it. */
export type LabD50 = readonly [l: number, a: number, b: number]

// CSS Color Module Level 4, sample code: white of D50 and Bradford's adaptation from D50 to D65; CIE 15 for Lab. Written
// out here, so that neither the library that is tested nor the judge of the other tests has a part in it.
const d50 = [0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585] as const
const d65 = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329] as const
const bradford = [
	[0.955473421488075, -0.02309845494876471, 0.06325924320057072],
	[-0.0283697093338637, 1.0099953980813041, 0.021041441191917323],
	[0.012314014864481998, -0.020507649298898964, 1.330365926242124],
] as const
const [kappa, epsilon] = [24389 / 27, 216 / 24389]

function toXyz([l, a, b]: LabD50): [number, number, number] {
	const y = (l + 16) / 116
	const [fx, fz] = [y + a / 500, y - b / 200]
	const back = (f: number) => (f ** 3 > epsilon ? f ** 3 : (116 * f - 16) / kappa)
	return [back(fx) * d50[0], (l > kappa * epsilon ? y ** 3 : l / kappa) * d50[1], back(fz) * d50[2]]
}

const f = (of: number): number => (of > epsilon ? Math.cbrt(of) : (kappa * of + 16) / 116)

/** The same colour as Lab relative to D65. */
export function adapted(lab: LabD50): { mode: 'lab65'; l: number; a: number; b: number } {
	const xyz = toXyz(lab)
	const [x = 0, y = 0, z = 0] = bradford.map((row, index) => {
		const sum = row.reduce<number>((total, factor, at) => total + factor * (xyz[at] ?? 0), 0)
		return f(sum / (d65[index] ?? 1))
	})
	return { mode: 'lab65', l: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) }
}
