'use client'
import { type PointerEvent, useEffect, useRef, useState } from 'react'
import { strokeText } from '@/lib/agreement/signing/stroke-text'

type Point = [x: number, y: number]
type Props = { readonly value: string; readonly error?: string | undefined }

const [wide, high] = [1000, 400]
const clamp = (value: number, most: number) => Math.max(0, Math.min(most, Math.round(value)))

function pointOf({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>): Point {
	const { left, top, width, height } = currentTarget.getBoundingClientRect()
	return [clamp(((clientX - left) / width) * wide, wide), clamp(((clientY - top) / height) * high, high)]
}

const linesIn = (text: string): Point[][] =>
	text === ''
		? []
		: text.split('_').map((line) =>
				line.split('-').map((point): Point => {
					const [x = 0, y = 0] = point.split('.').map(Number)
					return [x, y]
				}),
			)

/** A field to draw in, for who would like to; it comes with the scripts, and the typed name does without it. */
export function StrokeField({ value, error }: Props) {
	const [lines, setLines] = useState<Point[][]>(() => linesIn(value))
	const [isThere, setIsThere] = useState(false)
	const isDown = useRef(false)
	useEffect(() => setIsThere(true), [])
	const add = (event: PointerEvent<SVGSVGElement>) => {
		if (!isDown.current) return
		const point = pointOf(event)
		setLines((all) => [...all.slice(0, -1), [...(all.at(-1) ?? []), point]])
	}
	const begin = (event: PointerEvent<SVGSVGElement>) => {
		event.currentTarget.setPointerCapture(event.pointerId)
		isDown.current = true
		const point = pointOf(event)
		setLines((all) => [...all, [point]])
	}
	return (
		<>
			<input type="hidden" name="stroke" value={strokeText(lines)} />
			{error && (
				<p id="stroke" className="mt-5 font-semibold text-warn">
					{error}
				</p>
			)}
			{isThere && (
				<details className="mt-5" open={lines.length > 0 ? true : undefined}>
					<summary className="min-h-11 cursor-pointer py-2 font-semibold">Draw it as well, if you like</summary>
					<svg
						className="drawn-name"
						viewBox={`0 0 ${wide} ${high}`}
						role="img"
						aria-label="A field to draw your signature in"
						onPointerDown={begin}
						onPointerMove={add}
						onPointerUp={() => {
							isDown.current = false
						}}
					>
						{lines.map((line) => (
							<polyline
								key={line[0]?.join()}
								points={line
									.concat(line.slice(-1))
									.map((point) => point.join())
									.join(' ')}
							/>
						))}
					</svg>
					<button type="button" className="does" onClick={() => setLines([])}>
						Clear the drawing
					</button>
				</details>
			)}
		</>
	)
}
