import type { WallKind } from '@/lib/container/site'
import type { ClientKey } from '../clients'

type Colour = readonly [name: string, hex: string, side: 'inside' | 'outside']

/** A place with its wall, its door and the colours that the designer saw there. Tax in thousandths of a per cent. */
export type CastPlace = {
	readonly client: ClientKey
	readonly name: string
	readonly address: string
	readonly wall: readonly [kind: WallKind, hex: string]
	readonly door: string | null
	readonly driveMinutes: number
	readonly zoneCents?: number
	readonly taxMilliPercent: number
	readonly access: string
	readonly colours: readonly Colour[]
}

/** Wrenholt's own rate, and that of the villages round it. */
export const town = 6250
export const county = 5750
