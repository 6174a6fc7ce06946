import type { SceneLine } from '@/lib/picture/scene'
import type { Form } from '@/lib/recipe/look'
import type { Role } from '@/lib/recipe/material'
import type { Quarter } from '@/lib/season/season'
import { hex } from '@/lib/units/hex'

type Measures = readonly [lengthCm: number | null, acrossCm: number | null]

const line = (
	name: string,
	role: Role,
	form: Form,
	count: number,
	colours: string,
	[lengthCm, acrossCm]: Measures,
): SceneLine => {
	const [first = '#000000', second] = colours.split(' ')
	return {
		name,
		role,
		form,
		count,
		hex: hex(first),
		secondHex: second === undefined ? null : hex(second),
		lengthCm,
		acrossCm,
	}
}

/** Lines for the reference container, a round of 18 inches; one list a palette. */
export const palettes: Record<Quarter, Record<string, readonly SceneLine[]>> = {
	winter: {
		'copper and plum': [
			line('contorted hazel', 'thriller', 'twisting stems', 6, '#b5853f', [95, 30]),
			line('plum dogwood', 'thriller', 'straight stems', 5, '#5c2a40', [85, null]),
			line('noble fir', 'filler', 'short needle', 12, '#3f6b50', [50, 26]),
			line('white pine', 'filler', 'long needle', 6, '#5d8a66', [45, 24]),
			line('salal', 'filler', 'broad leaf', 4, '#47623c', [45, 22]),
			line('Port Orford cedar', 'spiller', 'flat fan', 9, '#7c8f4a', [42, 24]),
			line('copper globes', 'accent', 'cluster', 3, '#bf6d3d', [null, 14]),
			line('plum globes', 'accent', 'globe', 9, '#6d2f4c', [null, 8]),
			line('damson berries', 'accent', 'berries', 9, '#8a2f5a', [20, 10]),
			line('pine cones', 'accent', 'cone', 9, '#7a5638', [11, 7]),
		],
		'brass and navy': [
			line('gold dogwood', 'thriller', 'straight stems', 13, '#c99b34', [95, null]),
			line('noble fir', 'filler', 'short needle', 11, '#46705c', [50, 26]),
			line('boxwood', 'filler', 'small leaf', 10, '#5f7a44', [38, 20]),
			line('incense cedar', 'spiller', 'flat fan', 9, '#879a52', [42, 24]),
			line('brass globes', 'accent', 'globe', 9, '#c2a04c', [null, 9]),
			line('navy bow', 'accent', 'ribbon', 1, '#22356b #c2a04c', [null, 26]),
			line('warm lights', 'accent', 'lights', 2, '#ffd68a', [null, null]),
			line('stakes', 'mechanics', 'unseen', 4, '#888888', [null, null]),
		],
		'bone and charcoal': [
			line('birch logs', 'thriller', 'logs', 3, '#e8e2d6', [85, 8]),
			line('white birch', 'thriller', 'straight stems', 6, '#ded6c8', [100, null]),
			line('silver fir', 'filler', 'short needle', 12, '#5e7f78', [50, 26]),
			line('juniper', 'filler', 'scale leaf', 8, '#6c8a7c #46607e', [40, 20]),
			line('magnolia', 'filler', 'broad leaf', 5, '#4d6640 #8a5a36', [45, 26]),
			line('ivy', 'spiller', 'trailing', 7, '#4f6b45 #c9d2b4', [45, 20]),
			line('bone globes', 'accent', 'globe', 9, '#e9e2d2', [null, 9]),
			line('cones', 'accent', 'cone', 9, '#6b5140', [13, 8]),
			line('lotus pods', 'accent', 'pod', 9, '#7a6248', [30, 9]),
		],
	},
	spring: {
		'tulip and fern': [
			line('pussy willow', 'thriller', 'straight stems', 9, '#8a6a4a #e4e0d8', [90, null]),
			line('tulips', 'filler', 'bulb flowers', 9, '#d9577a #6d8f5a', [38, 12]),
			line('daffodils', 'filler', 'bulb flowers', 7, '#f2c744 #6d8f5a', [32, 12]),
			line('lady fern', 'filler', 'fern', 3, '#79a04e', [35, 40]),
			line('ivy', 'spiller', 'trailing', 5, '#4f7b45', [40, 18]),
			line('moss eggs', 'accent', 'pod', 6, '#9fb08a', [14, 7]),
		],
		'violet and lime': [
			line('curly willow', 'thriller', 'twisting stems', 5, '#a08a4a', [100, 30]),
			line('pansies', 'filler', 'round flowers', 9, '#6a4fa3 #5d8450', [18, 22]),
			line('hellebore', 'filler', 'foliage', 3, '#6f8f55', [35, 40]),
			line('lime heuchera', 'filler', 'rosette', 4, '#b5c24e', [22, 30]),
			line('vinca', 'spiller', 'trailing', 6, '#5d8450 #8f7fd0', [45, 18]),
		],
	},
	summer: {
		'geranium and grass': [
			line('fountain grass', 'thriller', 'grass', 1, '#6f3f4f', [85, 60]),
			line('geranium', 'filler', 'round flowers', 5, '#d03a34 #5d8a45', [38, 34]),
			line('white bacopa', 'filler', 'daisy flowers', 4, '#f4f2ea #6d9455', [25, 28]),
			line('coleus', 'filler', 'foliage', 3, '#8f2f44 #b5c24e', [40, 34]),
			line('sweet potato vine', 'spiller', 'trailing', 5, '#a9c24e', [55, 26]),
		],
		'cordyline and coral': [
			line('cordyline', 'thriller', 'sword leaves', 1, '#5c2b38', [90, 70]),
			line('salvia', 'filler', 'flower spike', 4, '#4a4fa8 #5d8a45', [45, 20]),
			line('coral zinnia', 'filler', 'daisy flowers', 5, '#ef7a5a #6d9455', [35, 26]),
			line('fern', 'filler', 'fern', 3, '#5f9a4a', [40, 46]),
			line('petunia', 'spiller', 'trailing', 6, '#5d8a55 #e8a0c0', [50, 24]),
		],
	},
	autumn: {
		'wheat and russet': [
			line('bearded wheat', 'thriller', 'plume', 11, '#c9a95c', [80, 8]),
			line('russet mums', 'filler', 'round flowers', 4, '#a4502a #5f7444', [35, 40]),
			line('silver sage', 'filler', 'foliage', 3, '#8a9a78', [30, 32]),
			line('kale', 'filler', 'rosette', 3, '#8a5a80 #6f8f7a', [24, 34]),
			line('creeping jenny', 'spiller', 'trailing', 6, '#a9b04e', [45, 18]),
			line('allium heads', 'filler', 'seed head', 4, '#a98a5a', [60, 9]),
			line('small gourds', 'accent', 'pumpkin', 6, '#d07f2e', [12, 14]),
		],
		'quince and pepper': [
			line('purple fountain grass', 'thriller', 'grass', 1, '#6f3f4f', [90, 60]),
			line('pampas plumes', 'filler', 'plume', 3, '#d9c7a4', [85, 14]),
			line('quince mums', 'filler', 'round flowers', 4, '#d9a02f #5f7444', [35, 40]),
			line('ornamental pepper', 'filler', 'foliage', 3, '#4f6b3a #b0442c', [30, 30]),
			line('coral bells', 'filler', 'rosette', 3, '#5c2b38', [25, 34]),
			line('bronze sedge', 'spiller', 'trailing', 5, '#9a6b3f', [40, 20]),
			line('bittersweet', 'accent', 'berries', 9, '#d9662a', [22, 12]),
			line('pumpkin', 'accent', 'pumpkin', 1, '#d9762a', [18, 22]),
			line('copper lights', 'accent', 'lights', 2, '#ffcf85', [null, null]),
		],
	},
}
