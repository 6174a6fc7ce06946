import 'server-only'
import sharp from 'sharp'

sharp.concurrency(1)
sharp.cache(false)
// What cameras make, and the drawings that are made here: the same library would open documents and archives.
sharp.block({ operation: ['VipsForeignLoad'] })
sharp.unblock({
	operation: [
		'VipsForeignLoadJpegBuffer',
		'VipsForeignLoadPngBuffer',
		'VipsForeignLoadWebpBuffer',
		'VipsForeignLoadSvgBuffer',
	],
})

/** The one library for pixels. It opens drawings too: bytes from outside are looked at by `isPhoto` first. */
export { sharp }
