/** The two files of a photo and the longest side of each, in pixels. */
export const photoSizes = { large: 1600, small: 480 } as const
export type PhotoSize = keyof typeof photoSizes

/** Photos that one form takes: of a visit, and of what is wrong. */
export const mostPhotos = { visit: 12, wrong: 4 } as const

export const isPhotoSize = (text: string): text is PhotoSize => Object.hasOwn(photoSizes, text)

/** Where a photo is found; it never changes under its address. */
export const photoAddress = (photo: string, size: PhotoSize): string => `/photo/${photo}/${size}.jpg`
