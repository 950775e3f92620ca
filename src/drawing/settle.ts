import { boxContains, boxesOverlap, type Box } from '../geometry/box.js'
import { ANYTHING, NOTHING, type Collector } from './collector.js'
import type { Drawing, DrawnText, Shape } from './drawing.js'

/**
 * What can only be told once the whole drawing was seen: whether shapes off the page belong to a panel that runs over its edge,
 * and whether strokes of no width are all that there is.
 */

/** A drawing is one of bare geometry when so small a share of its shapes is painted; a logo or a title may be. */
const HARDLY_ANY = 0.1

export type Settled = Pick<Drawing, 'shapes' | 'texts' | 'assumptions'>

/** Enters what is passed over among the rest. */
export function settle(collector: Collector, page: Box): Settled {
  const { shapes, offPage, thin } = collector
  if (offPage.size === 0 && thin.size === 0) return { shapes, texts: collector.texts, assumptions: [] }
  const assumptions: Drawing['assumptions'] = []
  const bare = thin.size > 0 && shapes.length - thin.size <= HARDLY_ANY * shapes.length && collector.texts.length === 0
  const seen = shapes.filter((shape) => !thin.has(shape) || bare)
  const holders =
    offPage.size > 0
      ? beyondPage(
          seen.filter((shape) => !offPage.has(shape)),
          page,
        )
      : []
  const kept = new Set(seen.filter((shape) => !offPage.has(shape) || holders.some((h) => boxContains(h, shape.box))))
  for (const shape of shapes) {
    if (kept.has(shape)) continue
    if (offPage.has(shape)) collector.ignore(shape.source, 'It lies wholly outside of the page.', NOTHING, shape.box)
    else collector.ignore(shape.source, 'Its only paint is a stroke of width 0.', ANYTHING, shape.box)
  }
  if (bare) assumptions.push({ about: 'stroke', text: BARE })
  if ([...kept].some((shape) => offPage.has(shape))) assumptions.push({ about: 'page', text: BEYOND })
  return { shapes: shapes.filter((s) => kept.has(s)), texts: shifted(collector.texts, shapes, kept), assumptions }
}

/** Shapes that reach over the edge of the page and are looked at: the largest ones. */
const MOST_HOLDERS = 20

const beyondPage = (onPage: readonly Shape[], page: Box): Box[] =>
  onPage
    .map((shape) => shape.box)
    .filter((box) => !boxContains(page, box) && boxesOverlap(page, box))
    .sort((a, b) => b.width * b.height - a.width * a.height)
    .slice(0, MOST_HOLDERS)

const BARE =
  'Nearly everything is drawn with strokes of width 0, which paint nothing: they are taken as the outlines of the shapes.'
const BEYOND = 'A shape runs over the edge of the page: what lies on it beyond the edge is read like the rest.'

/** Texts with their places in the paint order of the shapes that are left. */
function shifted(texts: readonly DrawnText[], shapes: readonly Shape[], kept: ReadonlySet<Shape>): DrawnText[] {
  let left = 0
  const before = [0, ...shapes.map((shape) => (left += kept.has(shape) ? 1 : 0))]
  return texts.map((text) => ({ ...text, after: before[text.after] }))
}
