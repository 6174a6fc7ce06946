import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { chromium } from 'playwright'
import { picture } from '@/lib/picture/picture'
import { sheets } from './scenes'

const folder = 'tests/output/contact-sheet'
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })
const only = process.argv[2]
const chosen = sheets.filter(({ name }) => only === undefined || name.includes(only))
const fileOf = (name: string) => `${name.replaceAll(' ', '-')}.svg`
const rows = chosen.map(({ name, scene, frame }) => {
	const svg = picture(scene, frame)
	writeFileSync(`${folder}/${fileOf(name)}`, svg)
	return { name, bytes: svg.length, zipped: gzipSync(svg).length }
})
const cells = rows.map(
	({ name, bytes, zipped }) =>
		`<figure><img src="${fileOf(name)}"><figcaption>${name} · ${(bytes / 1000).toFixed(0)} kB, ${(zipped / 1000).toFixed(1)} zipped</figcaption></figure>`,
)
const page = `<!doctype html><meta charset="utf-8"><style>body{margin:0;padding:12px;display:grid;grid-template-columns:repeat(3,1fr);gap:12px;font:12px sans-serif;background:#f6faf7}figure{margin:0}img{width:100%;aspect-ratio:1.6;object-fit:contain;display:block}</style>${cells.join('')}`
writeFileSync(`${folder}/index.html`, page)
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
const view = await browser.newPage({ viewport: { width: 1560, height: 1000 } })
await view.goto(`file://${process.cwd()}/${folder}/index.html`)
for (let from = 0; from < rows.length; from += 9) {
	const high = await view.evaluate(
		(at) => document.querySelectorAll('figure')[at]?.getBoundingClientRect().top ?? 0,
		from,
	)
	await view.screenshot({
		path: `${folder}/sheet-${from / 9 + 1}.png`,
		clip: { x: 0, y: high - 6, width: 1560, height: 1030 },
		fullPage: true,
	})
}
await browser.close()
const largest = rows.toSorted((a, b) => b.bytes - a.bytes)[0]
process.stdout.write(
	`${rows.length} pictures; largest ${largest?.name} ${largest?.bytes} bytes, ${largest?.zipped} zipped\n`,
)
