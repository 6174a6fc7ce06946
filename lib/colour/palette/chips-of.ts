import { capital } from '../../format/words'
import type { DesignMaterial } from '../../recipe/traits'
import { nameOf } from '../name-of'
import type { Chip } from './palette'

/** The colours of materials, each by a plain name, unless two of them would share it: then by the material's own. */
export function chipsOf(materials: readonly Pick<DesignMaterial, 'name' | 'hex'>[]): Chip[] {
	const names = materials.map(({ hex }) => nameOf(hex))
	return materials.map(({ name, hex }, index) => {
		const own = names[index] ?? ''
		const isTwice = names.filter((other) => other === own).length > 1
		return { name: capital(isTwice ? name : own).slice(0, 40), hex }
	})
}
