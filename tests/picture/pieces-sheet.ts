import { mkdirSync, writeFileSync } from 'node:fs'
import { chromium } from 'playwright'
import { diceOf } from '@/lib/picture/pen/dice-of'
import type { Piece } from '@/lib/picture/piece'
import { piecesOf } from '@/lib/picture/piece/pieces-of'
import { type Form, forms } from '@/lib/recipe/look'
import { hex } from '@/lib/units/hex'

// Contact sheets of every form: node --import tsx tests/picture/pieces-sheet.ts [form …]
const out = new URL('../output/pieces/', import.meta.url)

type Seen = Exclude<Form, 'unseen'>

/** First and second colour, length and spread in cm. */
const pairs: Record<Seen, readonly (readonly [string, string | null, number?, number?])[]> = {
	'straight stems': [
		['#d8d0c1', null, 122, 3],
		['#8f2c2f', null, 107, 2],
		['#cdb05a', null],
		['#6c513f', null, 60],
	],
	'twisting stems': [
		['#8c7147', null, 118, 22],
		['#6c513f', null, 110, 26],
		['#b98a3e', null],
	],
	'arching stems': [
		['#6b5241', '#93a698'],
		['#8a5a3c', '#d8b23a'],
		['#c98a6a', null],
	],
	logs: [
		['#e6dfd2', null],
		['#7a6450', '#cfae7e', 40, 9],
		['#d8d0c1', '#c79a63', 90, 8],
	],
	'evergreen top': [
		['#3d6147', null],
		['#5f7f86', null, 90, 40],
		['#4a6b3e', null, 60, 44],
	],
	grass: [
		['#9a6b3f', null, 45, 45],
		['#7c9a4e', '#d9d6a0', 40, 60],
		['#6f3f4f', null],
	],
	'sword leaves': [
		['#6b3a44', null],
		['#5d7d4b', '#d8d7a0', 60, 40],
		['#7d8f86', null],
	],
	'flower spike': [
		['#5b4a9a', null],
		['#c8506a', null, 60, 25],
		['#e8dfd0', '#6a8a5c', 30, 30],
	],
	'flat fan': [
		['#566b3d', null, 50, 26],
		['#7f8f4a', null],
		['#4f6f62', null, 30, 26],
	],
	'long needle': [
		['#4f7350', null, 46, 26],
		['#6c8a78', null],
		['#3f6a48', null, 30, 30],
	],
	'short needle': [
		['#3d6147', null, 50, 24],
		['#5e7f6e', null],
		['#5f7f86', null, 42, 20],
		['#2f4a35', null, 40, 20],
	],
	'scale leaf': [
		['#5c7076', '#3d4d66', 40, 20],
		['#56764f', null],
		['#7d8c5a', '#5a6a9a'],
	],
	'broad leaf': [
		['#4a4a2c', '#7a5534', 46, 30],
		['#3f5a34', '#8a5a34'],
		['#5c7a4a', null],
	],
	'small leaf': [
		['#4b6b3e', null, 36, 20],
		['#6f8460', '#d9dcae', 38, 20],
		['#93a698', null],
	],
	trailing: [
		['#4f6b45', null, 45, 25],
		['#5d7a55', '#e2e0c0'],
		['#a9b04e', null, 35, 25],
		['#93a698', null, 48, 14],
	],
	berries: [
		['#b02430', '#5d5148', 60, 18],
		['#6a2f4b', null],
		['#cfdde2', '#8d9799', 46, 14],
		['#b0442c', '#4a5a3a', 30, 25],
	],
	cone: [
		['#6d5640', null],
		['#8a6a48', null, 30, 11],
		['#c9c0b0', null, 7, 6],
	],
	pod: [
		['#7a6248', null],
		['#a99a78', null, 40, 4],
		['#5a4a3c', null, 24, 12],
	],
	'seed head': [
		['#b79a6a', null],
		['#c9a95c', null, 80, 4],
		['#8a6a9a', null],
	],
	plume: [
		['#d9c8a4', null],
		['#6f3f4f', '#6b3f49', 85, 60],
		['#b0506a', '#7c8a55'],
	],
	globe: [
		['#b4643a', null],
		['#dbe6ea', null],
		['#6a2f4b', null],
		['#7d5f45', null, 20, 16],
	],
	cluster: [
		['#b4643a', null, 34, 18],
		['#bb9346', '#24365a'],
		['#e9e2d2', '#6d5640'],
		['#82868b', null],
	],
	ribbon: [
		['#24365a', null, 32, 26],
		['#a5512b', null],
		['#b3596b', '#e9e2d2'],
	],
	pumpkin: [
		['#c9702c', null],
		['#e6dcc4', null],
		['#c07a32', '#6d7a3c', 12, 14],
	],
	'round flowers': [
		['#8f4a28', '#4e6a45', 40, 45],
		['#c8942f', null],
		['#6b4a9a', null, 15, 20],
	],
	'daisy flowers': [
		['#f2efe6', null],
		['#8a6ab0', null],
		['#e0a92e', null],
	],
	'bulb flowers': [
		['#c8344a', null],
		['#e8c64a', null],
		['#7a3a6a', '#7f9a86'],
	],
	rosette: [
		['#8a5a80', '#5d7362', 28, 30],
		['#efe6dc', '#7f9a78'],
		['#b0507a', null],
	],
	foliage: [
		['#5c2b38', null, 30, 35],
		['#8a9a78', null, 35, 35],
		['#c8784a', '#7a3a30'],
	],
	fern: [
		['#5c7f45', null],
		['#7f9a78', null],
		['#3f6a48', null],
	],
	lights: [
		['#f3d9a0', '#3a4034', 500, 1],
		['#ffffff', null],
		['#f0b060', null],
	],
}

const grounds = ['#5f7488', '#cfc7b8', '#7c3a2d', '#e7ece6']

type Sample = (typeof pairs)[Seen][number]

function piecesFrom(form: Seen, [first, second, lengthCm, acrossCm]: Sample, seed: number) {
	const colours = { hex: hex(first), secondHex: second === null ? null : hex(second) }
	const measures = { lengthCm: lengthCm ?? null, acrossCm: acrossCm ?? null }
	return piecesOf({ form, ...colours, ...measures, name: form, role: 'filler', count: 3 }, diceOf(`${form} ${seed}`))
}

function shown({ svg, heightCm, widthCm, hangs }: Piece, high: number, isFramed: boolean): string {
	const top = hangs ? 0 : -heightCm
	const scale = Math.min(high / heightCm, (high * 1.05) / widthCm)
	const box = `M${-widthCm / 2} ${top}h${widthCm}v${heightCm}h${-widthCm}z`
	const frame = `<path d="${box}" fill="none" stroke="#fff" stroke-opacity=".2" stroke-width="${0.7 / scale}"/>`
	const view = `${-widthCm / 2} ${top} ${widthCm} ${heightCm}`
	return `<svg width="${widthCm * scale}" height="${heightCm * scale}" viewBox="${view}" overflow="visible">${isFramed ? frame : ''}${svg}</svg>`
}

const onGround = (inside: string, index: number): string =>
	`<div style="background:${grounds[index % grounds.length]};padding:14px;font:10px sans-serif">${inside}</div>`

function samples(form: Seen, sample: Sample, index: number): string {
	const pieces = piecesFrom(form, sample, index)
	const draw = (high: number, most: number) =>
		pieces
			.slice(0, most)
			.map((piece) => shown(piece, high, index === 0))
			.join(' ')
	const bytes = pieces.map(({ svg }) => svg.length).join(' ')
	return onGround(`${draw(index === 0 ? 380 : 210, index === 0 ? 1 : 2)}<br>${draw(60, 3)}<br>${bytes}`, index)
}

const cells = (form: Seen): string =>
	`<h3 style="margin:8px;font:14px sans-serif">${form}</h3><div style="display:flex;align-items:end;gap:8px">${pairs[form].map((sample, index) => samples(form, sample, index)).join('')}</div>`

const overview = (of: readonly Seen[], index: number): string =>
	onGround(
		of
			.map((form, at) => {
				const sample = pairs[form][(index + at) % pairs[form].length]
				const [piece] = sample === undefined ? [] : piecesFrom(form, sample, index)
				return `<div style="text-align:center">${piece === undefined ? '' : `${shown(piece, 130, false)} ${shown(piece, 60, false)}`}<br>${form}</div>`
			})
			.join(''),
		index,
	).replace('<div style="', '<div style="display:flex;flex-wrap:wrap;align-items:end;gap:12px;')

mkdirSync(out, { recursive: true })
const asked = process.argv.slice(2)
const seen = forms.filter((form) => form !== 'unseen')
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
const page = await browser.newPage({ viewport: { width: 1500, height: 300 } })

async function sheet(name: string, body: string): Promise<void> {
	await page.setContent(`<body style="margin:0;background:#fff">${body}`)
	writeFileSync(new URL(`${name}.png`, out), await page.screenshot({ fullPage: true }))
}

const asOne = (of: readonly Seen[]) => of.map(cells).join('')
if (asked.length > 0) await sheet('asked', asOne(seen.filter((form) => asked.includes(form))))
else {
	for (const form of seen) await sheet(form.replaceAll(' ', '-'), cells(form))
	await sheet('overview', [0, 1, 2, 3].map((index) => overview(seen, index)).join(''))
}
await browser.close()
