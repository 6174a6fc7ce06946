import sharp from 'sharp'

export const plain = (width: number, height: number, background = '#5f7488') =>
	sharp({ create: { width, height, channels: 3, background } })

/** The first box of a HEIC file (ISO/IEC 23008-12): what a phone would send. */
export const heic = Buffer.concat([Buffer.from([0, 0, 0, 24]), Buffer.from('ftypheic'), Buffer.alloc(4000, 7)])

/** What a form for photos may be handed instead of one. */
export const noPhotos: readonly { readonly what: string; readonly make: () => Promise<Buffer> | Buffer }[] = [
	{ what: 'a bomb: 64 million pixels', make: () => plain(8000, 8000).png({ compressionLevel: 9 }).toBuffer() },
	{ what: 'cut short', make: async () => (await plain(900, 700).jpeg().toBuffer()).subarray(0, 400) },
	{ what: 'a drawing', make: () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>') },
	{ what: 'HEIC', make: () => heic },
]
