/** Pixels, in the ratio in which links are shown (the Open Graph protocol names no size; 1.91 to 1 is common practice). */
export const coverSize = { width: 1200, height: 630 } as const

const key = /^[0-9a-f]{32}$/
const file = /^([0-9a-f]{32})\.png$/

/** Whether a text can be the key of a cover: 16 random bytes in hexadecimal. */
export const isCoverKey = (text: string): boolean => key.test(text)

/** The address of a cover within the site. */
export const coverPath = (of: string): string => `/cover/${of}.png`

/** The key in the last part of such an address; undefined for what is none. */
export const coverKeyIn = (name: string): string | undefined => file.exec(name)?.[1]
