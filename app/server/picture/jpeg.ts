import 'server-only'
import { sharp } from './codec'

const slowest = { seconds: 10 }

/** A drawing of ours in pixels, every mail reader's kind: the same document in the same size gives the same bytes. */
export const jpeg = (svg: string, width: number, height: number): Promise<Buffer> =>
	sharp(Buffer.from(svg))
		.timeout(slowest)
		.resize(width, height, { fit: 'fill' })
		.flatten({ background: '#ffffff' })
		.jpeg({ quality: 82, mozjpeg: true })
		.toBuffer()
