import { photoSizes } from '@/lib/visit/photo'

const small = 900_000

/** A photo as large as it will be kept: a phone in a poor network sends a tenth of it. As it was, where the browser cannot. */
export async function shrunk(file: File): Promise<File> {
	const picture = await createImageBitmap(file).catch(() => null)
	if (picture === null) return file
	const scale = Math.min(1, photoSizes.large / Math.max(picture.width, picture.height))
	if (scale === 1 && file.size < small) return file
	const canvas = document.createElement('canvas')
	canvas.width = Math.max(1, Math.round(picture.width * scale))
	canvas.height = Math.max(1, Math.round(picture.height * scale))
	const pen = canvas.getContext('2d')
	if (pen === null) return file
	pen.fillStyle = '#ffffff'
	pen.fillRect(0, 0, canvas.width, canvas.height)
	pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
	const made = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.85))
	return made === null ? file : new File([made], file.name, { type: 'image/jpeg' })
}
