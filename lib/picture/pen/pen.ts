import type { Light } from '../light/light'
import type { Defs } from './defs'

/** What everything is drawn with: definitions to share, and the hour's light. */
export type Pen = { readonly defs: Defs; readonly light: Light }

/** How much of a depth, in cm towards the viewer, shows as height on the paper: seen from a little above, all else to scale. */
export const tilt = 0.2
