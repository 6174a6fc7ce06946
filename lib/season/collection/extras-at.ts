import type { DraftExtra } from '../../proposal/draft'
import type { Site } from '../../proposal/facts'
import { cardsToFill, type Ground, wantedFor } from '../../proposal/start/fresh'
import { standInsFor, withStandIns } from '../../proposal/start/stand-ins'
import type { CollectionExtra } from './collection'

const mostExtras = 20

type Put = { readonly extras: DraftExtra[]; readonly told: readonly string[] }

/** What a collection offers beside its designs, at each place that has a container: lights only where an outlet is near. */
export function extrasAt(all: readonly CollectionExtra[], ground: Ground): Put {
	const { facts } = ground
	const cards = cardsToFill(ground)
	const sites = facts.sites.filter(({ id }) => cards.some(({ place }) => place === id))
	const named = all.flatMap(({ lines }) => lines.map(({ material }) => material))
	const { standIns, told } = standInsFor(named, facts.materials, wantedFor(ground))
	const isLit = ({ lines }: CollectionExtra) =>
		lines.some(({ material }) => facts.materials.get(material)?.kind === 'light')
	const hasOutlet = ({ id }: Site) => cards.some(({ place, outletNear }) => place === id && outletNear)
	const pairs = sites.flatMap((site) => all.map((extra) => ({ site, extra })))
	const dark = pairs.filter(({ site, extra }) => isLit(extra) && !hasOutlet(site))
	const offered = pairs.filter((pair) => !dark.includes(pair)).slice(0, mostExtras)
	const extras = offered.map(({ site, extra }, index) => ({
		...extra,
		key: `x${index + 1}`,
		name: (sites.length > 1 ? `${extra.name}, ${site.name}` : extra.name).slice(0, 80),
		place: site.id,
		lines: withStandIns(extra.lines, standIns),
	}))
	const unlit = dark.map(({ site, extra }) => `${extra.name} is not offered at ${site.name}: no outlet is near.`)
	return { extras, told: [...told, ...unlit] }
}
