import type { Judged } from '../../recipe/check/finding'
import type { ContainerId } from '../../units/id'

/** What the designer is told of one pot of an option. */
export type PotState = Judged & {
	readonly container: ContainerId
	/** "White birch up the middle, three greens, cedar over the rim and brass globes." */
	readonly says: string
	/** "About 31 kg when wet" */
	readonly weighs: string
}
