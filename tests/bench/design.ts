import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import sharp from 'sharp'
import { palettes } from '@/lib/colour/palette/palettes'
import { siteColours } from '@/lib/colour/site/site-colours'
import { moneyFormat } from '@/lib/format/money'
import { cuts } from '@/lib/forms/pictures/picture-address'
import { picture } from '@/lib/picture/picture'
import { price } from '@/lib/pricing/price'
import { regrown } from '@/lib/proposal/design/grown-lines'
import { potStates } from '@/lib/proposal/design/pot-state'
import { propose } from '@/lib/proposal/design/propose'
import { emptyDraft } from '@/lib/proposal/draft'
import { cardsOf, jobOf } from '@/lib/proposal/job-of'
import { makeOffer } from '@/lib/proposal/make'
import { sceneOf } from '@/lib/proposal/offer/scene-of'
import { hex } from '@/lib/units/hex'
import { id } from '@/lib/units/id'
import { front, houseWinter, winterMaterials } from '../lib/proposal/design/house-winter'
import { card, first, placeId, facts as sample, today } from '../lib/proposal/sample'
import { median, row } from './row'

const money = moneyFormat('USD')
function studio(containers: number) {
	const ids = Array.from({ length: containers }, (_, n) =>
		id<'container'>(`00000000-0000-7000-8000-${String(n).padStart(12, '0')}`),
	)
	const cards = ids.map((container, n) => ({
		...card(1, `Pot ${n + 1}`, { topCm: 40 + (n % 9), place: placeId(1) }),
		id: container,
	}))
	const facts = { ...sample, cards, materials: new Map(winterMaterials.map((each) => [each.id, each])) }
	const empty = emptyDraft({ from: null, to: null, answerBy: null })
	const draft = { ...empty, containers: ids.map((container) => ({ id: container, mayLeaveOut: false, isNew: false })) }
	return {
		facts,
		draft: { ...draft, options: [...propose(draft, facts, { site: front, recipes: [houseWinter] }).options] },
	}
}

/** Growing anew, checks, price and one picture an option: what the desk asks at a keystroke. */
function whole({ facts, draft }: ReturnType<typeof studio>) {
	const options = draft.options.map((option) => ({
		...option,
		pots: option.pots.map((pot) => {
			const at = cardsOf(draft, facts).find(({ id: container }) => container === pot.container)
			return at === undefined ? pot : { ...pot, lines: regrown(pot.lines, at, facts.materials) }
		}),
	}))
	const grown = { ...draft, options }
	const { offer } = makeOffer(grown, facts, money, 1, today)
	return options.map((option) => {
		const job = jobOf(grown, option, facts)
		const scene = sceneOf(offer, {
			place: '',
			option: option.key,
			extras: [],
			leftOut: [],
			hour: 'day',
			measure: 'none',
		})
		return [potStates(option, grown, facts), job && price(job, { money }), scene && picture(scene, cuts.full)] as const
	})
}

function timed(act: () => unknown, rounds = 15): number {
	for (let n = 0; n < 3; n += 1) act()
	return median(
		Array.from({ length: rounds }, () => {
			const start = performance.now()
			act()
			return performance.now() - start
		}),
	)
}

const three = studio(3)
const ms = timed(() => whole(three))
row(
	'growing, checks, price and pictures of three options for three containers',
	`${ms.toFixed(1)} ms`,
	'at most 30 ms',
	ms <= 30,
)
const grow = (count: number) => {
	const { facts, draft } = studio(count)
	const cards = cardsOf(draft, facts)
	return timed(
		() =>
			draft.options.map(({ pots }) =>
				pots.map(({ lines }, n) => cards[n] && regrown(lines, cards[n], facts.materials)),
			),
		5,
	)
}
const [ten, thousand] = [grow(10), grow(1000)]
const growth = thousand / (ten * 100)
row('growth of 1,000 containers against 10 times 100', growth.toFixed(2), 'at most 1.5', growth <= 1.5)
const [firstOption] = makeOffer(studio(2).draft, studio(2).facts, money, 1, today).offer.options
const { offer } = makeOffer(studio(2).draft, studio(2).facts, money, 1, today)
const sizes = (['wide', 'panel', 'panel', 'panel'] as const).map((cut, n) => {
	const option = offer.options[Math.max(0, n - 1)] ?? firstOption
	const scene = sceneOf(offer, {
		place: '',
		option: option?.key ?? null,
		extras: [],
		leftOut: [],
		hour: 'day',
		measure: 'none',
	})
	return scene === undefined ? '' : picture(scene, cuts[cut])
})
const kb = (of: number) => `${(of / 1024).toFixed(1)} kB`
const [hero = ''] = sizes
row('a picture of two containers', kb(hero.length), 'under 80 kB', hero.length < 80 * 1024)
row(
	'a picture of two containers, compressed',
	kb(gzipSync(hero).length),
	'under 20 kB',
	gzipSync(hero).length < 20 * 1024,
)
const together = sizes.reduce((sum, svg) => sum + gzipSync(svg).length, 0)
row('hero and three options, compressed', kb(together), 'at most 80 kB', together <= 80 * 1024)

const noise = await sharp({
	create: {
		width: 4000,
		height: 3000,
		channels: 3,
		background: '#5f7488',
		noise: { type: 'gaussian', mean: 128, sigma: 30 },
	},
})
	.jpeg({ quality: 88 })
	.toBuffer()
const start = performance.now()
const { data, info } = await sharp(noise)
	.resize(400, 400, { fit: 'inside' })
	.raw()
	.toBuffer({ resolveWithObject: true })
siteColours(data, { width: info.width, height: info.height, channels: 3 })
const photo = performance.now() - start
row('colours of a 12-megapixel photo', `${photo.toFixed(0)} ms`, 'under 1000 ms', photo < 1000)

/** What a process holds at the most, in MB, while it looks at the photo; at none: what it holds anyway. */
function mostMb(...photos: readonly string[]): number {
	const program = ['--conditions=react-server', '--import', 'tsx', join('tests', 'bench', 'photo-memory.ts')]
	return Number(execFileSync(process.execPath, [...program, ...photos], { encoding: 'utf8' })) / 1024
}
const folder = mkdtempSync(join(tmpdir(), 'doorsill-bench-'))
const file = join(folder, 'front.jpg')
writeFileSync(file, noise)
const memory = mostMb(file) - mostMb()
rmSync(folder, { recursive: true })
row('memory for a 12-megapixel photo, over the base', `${memory.toFixed(0)} MB`, 'under 200 MB', memory < 200)
const many = Array.from({ length: 2000 }, (_, n) => ({
	...(winterMaterials[n % winterMaterials.length] ?? first(winterMaterials)),
	id: id<'material'>(`00000000-0000-7000-9000-${String(n).padStart(12, '0')}`),
	hex: hex(`#${(0x202020 + n * 6151).toString(16).slice(-6).padStart(6, '0')}`),
}))
const ask = {
	site: front,
	wall: { kind: 'clapboard', hex: hex('#5f7488') },
	door: null,
	materials: many,
	month: 11,
} as const
const found = timed(() => palettes(ask), 7)
row('palettes over 2,000 materials', `${found.toFixed(1)} ms`, 'under 50 ms', found < 50)
