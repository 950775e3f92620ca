import { boxOfPoints, unionOfBoxes, type Box } from '../geometry/box.js'
import { isKnown, missing, type Assumption, type Fact, type Colour, type Pictogram } from '../sign/sign.js'
import { coloursOf, type Cloud, type Painted, type Surface } from './colours.js'
import { holdsPiece, type Piece } from './pieces.js'
import { UNDRAWN_SYMBOL } from './undrawn.js'

/**
 * Pictograms: only what the client named so. The field is the whole area set apart for one: a shape named field, or else the
 * smallest area without a name of its own that the pictogram was painted on, the panel excepted.
 */

/** The word by which a drawing names a pictogram's field. Common practice, no source. */
const FIELD_WORD = /(^|[^\p{L}])field([^\p{L}]|$)/iu

/** Two figures without a field that stand nearer than this, in millimetres, are one pictogram. */
const ONE_PICTOGRAM = 15

export interface FoundPictograms {
  pictograms: Pictogram[]
  assumptions: Assumption[]
}

/**
 * @param named pieces that the client named pictograms
 * @param grounds areas on which other things are drawn, the panel and its sheet among them
 */
export function findPictograms(
  named: readonly Piece[],
  grounds: readonly Piece[],
  panel: Piece | undefined,
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): FoundPictograms {
  const inside = (field: Piece) => named.filter((p) => p !== field && holdsPiece(field, p))
  const smaller = grounds.filter((g) => g !== panel && (!panel || holdsPiece(panel, g)))
  const candidates = [...named, ...smaller].filter((p) => inside(p).length > 0 && isPlainArea(p))
  const innermost = candidates.filter(
    (f) => !candidates.some((g) => g !== f && holdsPiece(f, g) && inside(g).length === inside(f).length),
  )
  const fields = innermost.filter((f) => !innermost.some((g) => g !== f && holdsPiece(g, f)))
  const taken = new Set(fields.flatMap((f) => [f, ...inside(f)]))
  const groups: Group[] = fields.map((field) => ({ field, figures: inside(field) }))
  for (const figures of clustersOf(named.filter((p) => !taken.has(p)))) groups.push({ figures })
  groups.sort((a, b) => leastOrder(a.figures) - leastOrder(b.figures))
  return {
    pictograms: groups.map((g, i) => pictogramOf(g, `pictogram/${i}`, surfaces, clouds)),
    assumptions: assumptionsOf(groups, named),
  }
}

interface Group {
  field?: Piece
  figures: Piece[]
}

/** One outline that is filled or stroked: an area, not a figure with openings. */
const isPlainArea = ({ shape }: Piece) => shape.contours.length === 1

const isNamedField = (piece: Piece): boolean => piece.shape.labels.names.some((name) => FIELD_WORD.test(name))

function assumptionsOf(groups: readonly Group[], named: readonly Piece[]): Assumption[] {
  if (groups.length === 0)
    return [{ about: 'pictogram', text: 'Nothing is named a pictogram: the sign is taken to have none.' }]
  const guessed = groups.some(({ field }) => field && !named.includes(field) && !isNamedField(field))
  return guessed
    ? [{ about: 'pictogram', text: 'The area that a pictogram is painted on is taken for its field.' }]
    : []
}

const leastOrder = (pieces: readonly Piece[]) => pieces.reduce((least, p) => Math.min(least, p.order), Infinity)

function clustersOf(pieces: readonly Piece[]): Piece[][] {
  const clusters: Piece[][] = []
  for (const piece of pieces) {
    const near = clusters.filter((c) => c.some((p) => apart(p.box, piece.box) < ONE_PICTOGRAM))
    const merged = [...near.flat(), piece]
    for (const c of near) clusters.splice(clusters.indexOf(c), 1)
    clusters.push(merged)
  }
  return clusters
}

const apart = (a: Box, b: Box): number =>
  Math.hypot(
    Math.max(0, a.x - b.x - b.width, b.x - a.x - a.width),
    Math.max(0, a.y - b.y - b.height, b.y - a.y - a.height),
  )

function pictogramOf(
  { field, figures }: Group,
  element: string,
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): Pictogram {
  const shapes = [...new Set(figures.map((f) => f.shape))]
  const painted = shapes.map((shape): Painted => {
    const own = figures.filter((f) => f.shape === shape)
    return { outlines: own.map((f) => f.outline), order: own[0].order, fill: shape.fill }
  })
  const under =
    field && !surfaces.some((s) => s.shape === field.shape) ? [{ shape: field.shape, order: field.order }] : []
  const behind = [...surfaces, ...under].sort((a, b) => a.order - b.order)
  const pair = coloursOf(painted, behind, clouds)
  const fieldColour: Fact<Colour> = pair.background
  const source = figures[0].shape.source
  const figure = boxOfPoints(figures.flatMap((f) => f.outline))
  const box = unionOfBoxes([field?.box, figure])
  return {
    place: { element, box, source },
    field: field
      ? { value: field.box, basis: 'drawn', method: 'box of the area that the pictogram is painted on' }
      : missing('no field is drawn for the pictogram'),
    colour: pair.colour,
    fieldColour: isKnown(fieldColour)
      ? { ...fieldColour, method: 'what is painted behind the pictogram' }
      : fieldColour,
    finish: missing('a drawing does not say the finish'),
    figureHeight: missing(),
    ...(figure && { figure }),
    outlines: { ...(field && { field: field.outline }), figure: figures.map(({ outline }) => outline) },
    symbol: UNDRAWN_SYMBOL,
  }
}
