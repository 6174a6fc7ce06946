import type { Json } from '@/lib/record/canonical'
import type { Entry, Kept } from '@/lib/record/chain'

export function canonical(value: Json): string
export function lineHash(entry: Entry): string
export function faultsOfChain(lines: readonly Kept[], head?: { readonly seq: number; readonly hash: string }): string[]
export function faultsOfPapers(
	lines: readonly Kept[],
	files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): string[]
