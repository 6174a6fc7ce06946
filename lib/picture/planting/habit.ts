import type { Form } from '../../recipe/look'
import type { SceneLine } from '../scene'

/** How a piece stands in a pot: up the middle, fanned out, over the rim, set on the face, as a plant of its own. */
export type Habit = 'upright' | 'fanned' | 'standing' | 'hanging' | 'set' | 'mound' | 'lights' | 'unseen'

const ornaments: ReadonlySet<Form> = new Set(['berries', 'cone', 'pod', 'globe', 'cluster', 'ribbon', 'pumpkin'])
const plants: ReadonlySet<Form> = new Set([
	'round flowers',
	'daisy flowers',
	'bulb flowers',
	'rosette',
	'foliage',
	'fern',
	'grass',
	'sword leaves',
	'flower spike',
	'trailing',
])
const slender: ReadonlySet<Form> = new Set(['plume', 'seed head', 'straight stems', 'twisting stems', 'arching stems'])

/** A plant with roots stands on the soil; a cut stem is pushed into it. */
export const isPlant = (form: Form): boolean => plants.has(form)

export function habitOf({ form, role, count }: SceneLine): Habit {
	if (form === 'unseen' || !(count > 0)) return 'unseen'
	if (form === 'lights') return 'lights'
	if (ornaments.has(form)) return 'set'
	if (role === 'spiller' || form === 'trailing') return 'hanging'
	if (role === 'thriller' || form === 'logs' || form === 'evergreen top') return 'upright'
	if (slender.has(form)) return 'standing'
	return isPlant(form) ? 'mound' : 'fanned'
}
