import { chromium } from 'playwright'
import { makeSheet } from './make-sheet'

const { page, folder, shots } = makeSheet(process.argv[2])
const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
const view = await browser.newPage({ viewport: { width: 1560, height: 1000 } })
await view.goto(`file://${process.cwd()}/${page}`)
for (let from = 0; from < shots.length; from += 9) {
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
const largest = shots.toSorted((a, b) => b.bytes - a.bytes)[0]
process.stdout.write(
	`${shots.length} pictures; largest ${largest?.name} ${largest?.bytes} bytes, ${largest?.zipped} zipped\n`,
)
