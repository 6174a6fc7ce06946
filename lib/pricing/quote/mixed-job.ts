import type { PlaceId } from '@/lib/units/id'
import type { JobInputs } from '../job-schema'

/**
 * The job that is done where places take different options of one offer: what is bought and worked, and so what it
 * costs; its prices are those of `mixedList`.
 * @throws when the jobs are not of one offer
 */
export function mixedJob(main: JobInputs, jobAt: (place: PlaceId) => JobInputs): JobInputs {
	const containers = main.containers.map(({ id, place, name }) => {
		const found = jobAt(place).containers.find((each) => each.id === id)
		if (found === undefined) throw new Error(`mixedJob: "${name}" is not in every job`)
		return found
	})
	return { ...main, containers }
}
