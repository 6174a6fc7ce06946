import { type Hash, hashOf } from '../record/hash'
import type { Scene } from './scene'

/** What a picture of a scene is known by: SHA-256 of its canonical JSON. */
export const sceneHash = (scene: Scene): Hash => hashOf(scene)
