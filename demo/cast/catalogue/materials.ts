import { autumnMaterials } from './autumn'
import { winterMaterials } from './winter'

export const materials = { ...winterMaterials, ...autumnMaterials }
export type MaterialKey = keyof typeof materials
