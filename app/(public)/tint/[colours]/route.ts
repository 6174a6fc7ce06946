import { type Tint, tint } from '@/lib/colour/tint'
import { isHex } from '@/lib/units/hex'

const rule = (key: string, { mark, wash }: Tint['light']) => `[data-tint="${key}"]{--mark:${mark};--wash:${wash}}`

/** A page's tint, addressed by the hex values of a wall and an accent: "5f7488-b5653a.css". It says nothing of anybody. */
export async function GET(_request: Request, { params }: RouteContext<'/tint/[colours]'>): Promise<Response> {
	const { colours } = await params
	const [, wall, accent] = /^([0-9a-f]{6})-([0-9a-f]{6})\.css$/.exec(colours) ?? []
	const [from, to] = [`#${wall}`, `#${accent}`]
	if (!isHex(from) || !isHex(to)) return new Response('', { status: 404 })
	const { light, dusk } = tint(from, to)
	const key = `${wall}-${accent}`
	return new Response(`${rule(key, light)}@media (prefers-color-scheme:dark){${rule(key, dusk)}}`, {
		headers: { 'content-type': 'text/css; charset=utf-8', 'cache-control': 'public, max-age=31536000, immutable' },
	})
}
