import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { picture } from '@/lib/picture/picture'
import { sheets } from './scenes'

const folder = 'tests/output/contact-sheet'
const style =
	'body{margin:0;padding:12px;display:grid;grid-template-columns:repeat(3,1fr);gap:12px;font:12px sans-serif;background:#f6faf7}figure{margin:0}img{width:100%;aspect-ratio:1.6;object-fit:contain;display:block}'

export type Shot = { readonly name: string; readonly svg: string; readonly bytes: number; readonly zipped: number }

/** The contact sheet: every picture whose name holds `only` as a file of its own, and one page that shows them all. */
export function makeSheet(only = ''): {
	readonly page: string
	readonly folder: string
	readonly shots: readonly Shot[]
} {
	rmSync(folder, { recursive: true, force: true })
	mkdirSync(folder, { recursive: true })
	const shots = sheets
		.filter(({ name }) => name.includes(only))
		.map(({ name, scene, frame }) => {
			const svg = picture(scene, frame)
			return { name, svg, bytes: svg.length, zipped: gzipSync(svg).length }
		})
	const cells = shots.map(({ name, svg, bytes, zipped }) => {
		const file = `${name.replaceAll(' ', '-')}.svg`
		writeFileSync(`${folder}/${file}`, svg)
		const size = `${(bytes / 1000).toFixed(0)} kB, ${(zipped / 1000).toFixed(1)} zipped`
		return `<figure><img src="${file}" alt=""><figcaption>${name} · ${size}</figcaption></figure>`
	})
	const page = `${folder}/index.html`
	writeFileSync(page, `<!doctype html><meta charset="utf-8"><style>${style}</style>${cells.join('')}`)
	return { page, folder, shots }
}
