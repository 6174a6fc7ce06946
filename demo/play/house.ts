import { offerSetUp, setUpStudio } from '@/db/start/set-up'
import { hireStaff } from '@/db/studio/hire'
import { planSeason } from '@/db/studio/seasons'
import { sha256 } from '@/lib/record/hash'
import { addDays, type Day } from '@/lib/units/day'
import { seasons } from '../cast/proposals/proposals'
import { staff, studio } from '../cast/studio'
import { keysOf } from './keys'
import { must } from './must'
import type { Stage } from './stage'
import { type Act, momentOn } from './timeline'

const opened = -150

/** The studio becomes the designer's, and the helper comes in. */
function opening(stage: Stage): Act[] {
	const { designer, helper } = staff
	return [
		{
			at: momentOn(stage.today, opened, '13:10'),
			run: async (stamp) => {
				const link = sha256(stamp.salt())
				await offerSetUp(link, stamp)
				const made = { ...studio, designer: designer.name, address: designer.address }
				const person = await setUpStudio(link, made, stamp)
				if (person === undefined) throw new Error('The studio is somebody’s already: the play needs an empty one.')
				stage.people.put('designer', person)
			},
		},
		{
			at: momentOn(stage.today, opened, '13:40'),
			run: async (stamp) => {
				const hired = await hireStaff(await stage.designer(), { ...helper, role: 'helper' }, stamp)
				stage.people.put('helper', must('helper', hired).person)
			},
		},
	]
}

/** The winter that is being sold on `today` began in the year before while the year is young. */
export const yearOf = (today: Day) => Number(today.slice(0, 4)) - (Number(today.slice(5, 7)) <= 5 ? 1 : 0)

function planning(stage: Stage): Act[] {
	const { today } = stage
	return keysOf(seasons).map((quarter) => {
		const { planned, from, to, answerBy } = seasons[quarter]
		return {
			at: momentOn(today, planned, '13:30'),
			run: async (stamp) => {
				const dates = { windowFrom: addDays(today, from), windowTo: addDays(today, to) }
				const plan = { quarter, year: yearOf(today), ...dates, answerBy: addDays(today, answerBy) }
				stage.seasons.put(quarter, must(quarter, await planSeason(await stage.designer(), plan, stamp)).id)
			},
		}
	})
}

export const house = (stage: Stage): Act[] => [...opening(stage), ...planning(stage)]
