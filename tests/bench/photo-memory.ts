import { readFileSync } from 'node:fs'
import { lookAtPhoto } from '@/app/server/picture/photo'

/** A process of its own that looks at the photo named to it, or at none, and prints the most memory that it held, in kB. */
const [file] = process.argv.slice(2)
if (file !== undefined) {
	const looked = await lookAtPhoto(readFileSync(file), null)
	if (!looked.ok) throw new Error(`photo-memory: ${looked.says}`)
}
process.stdout.write(String(process.resourceUsage().maxRSS))
