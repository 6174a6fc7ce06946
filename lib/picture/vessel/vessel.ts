import type { Pen } from '../pen/pen'
import type { Body } from './body'
import { box } from './box'
import type { Drawn } from './drawn'
import { round } from './round'

export const vessel = (body: Body, pen: Pen): Drawn => (body.isRound ? round(body, pen) : box(body, pen))
