import type { Drawing } from '../drawing/drawing.js'
import { boxesOverlap, centreOfBox } from '../geometry/box.js'
import { pointsOf } from '../geometry/loop.js'
import { distance } from '../geometry/point.js'
import type { Assumption, Ignored, Unread } from '../sign/sign.js'
import { ringsOf, type Ring } from './borders.js'
import { findPanel, type FoundPanel } from './panel.js'
import { holdersOf, holdsPiece, type Holder, type Piece, type Things } from './pieces.js'
import { uprightOf } from '../geometry/upright.js'

/** What every piece of a drawing is taken for, once the dots of its braille are gone. */
export interface Sorted {
  found: FoundPanel
  /** Contours that hold others. */
  holders: Holder[]
  borders: Ring[]
  /** Areas that lie behind other things: panel, sheet, inlays, fields. */
  grounds: Piece[]
  pictograms: Piece[]
  /** Whatever may be a character. */
  characters: Piece[]
  assumptions: Assumption[]
  unread: Unread[]
  ignored: Ignored[]
}

/** A contour that holds so many others of other paths is a ground or a border, not a character with its counters. */
const HELD_BY_A_GROUND = 3

/** A mounting hole is round, of this diameter, and this near to two edges of the panel. Millimetres; common practice, no source. */
const HOLE = { min: 2.5, max: 12, fromEdges: 15 }
/** How much the sides of the box round a circle may differ, and its area from a circle's. */
const ROUND = 0.03

export function sortOut(things: Things, drawing: Drawing): Sorted {
  const { pieces } = things
  const holders = holdersOf(things)
  const rings = ringsOf(holders)
  const found = findPanel(
    holders,
    rings,
    drawing,
    pieces.filter((p) => p.named?.part === 'panel'),
  )
  const taken = new Set<Piece>(found.sheets)
  if (found.piece) taken.add(found.piece)
  const borders = bordersAmong(rings, holders, found)
  const edges = [...borders, ...rings.filter((r) => r.outer === found.piece)].flatMap(edgesOf)
  const named = pieces.filter((p) => p.named?.part === 'border' && !edges.includes(p) && !taken.has(p))
  for (const outer of named) borders.push({ outer, width: outer.shape.stroke?.width ?? 0 })
  for (const piece of [...edges, ...named]) taken.add(piece)
  const grounds = [...found.sheets, ...(found.piece ? [found.piece] : [])]
  const figures = pieces.filter((p) => p.named?.part === 'pictogram')
  const isField = (piece: Piece) => figures.some((f) => f.shape !== piece.shape && holdsPiece(piece, f))
  for (const holder of holders) {
    if (
      taken.has(holder.piece) ||
      holder.piece.named?.part === 'pictogram' ||
      !(isGround(holder) || isField(holder.piece))
    )
      continue
    grounds.push(holder.piece)
    taken.add(holder.piece)
  }
  const left = pieces.filter((p) => !taken.has(p))
  const outside = left.filter((p) => found.piece && !boxesOverlap(p.box, found.piece.box))
  const holes = left.filter((p) => p.named === undefined && isHole(p, found.piece))
  const away = new Set([...outside, ...holes])
  const kept = left.filter((p) => !away.has(p))
  return {
    found,
    holders,
    borders,
    grounds,
    pictograms: kept.filter((p) => p.named?.part === 'pictogram'),
    characters: kept.filter((p) => p.named?.part !== 'pictogram'),
    assumptions: [
      ...found.assumptions,
      ...remarks(borders, grounds.length - found.sheets.length - (found.piece ? 1 : 0), holes),
    ],
    unread: frameOfPanel(rings, found),
    ignored: [
      ...outside.map((p) => ({ source: p.shape.source, why: 'It lies outside the panel.' })),
      ...holes.map((p) => ({
        source: p.shape.source,
        why: 'It is round and near the edges of the panel: taken for a mounting hole.',
      })),
    ],
  }
}

const edgesOf = ({ outer, inner }: Ring) => (inner ? [outer, inner] : [outer])

const isGround = ({ dots, texts, pieces }: Holder) => dots > 0 || texts > 0 || pieces >= HELD_BY_A_GROUND

/** Rings on the panel that hold something of the sign. The panel's own edge is none. */
function bordersAmong(rings: readonly Ring[], holders: readonly Holder[], { piece, sheets }: FoundPanel): Ring[] {
  return rings.filter((ring) => {
    const holder = holders.find((h) => h.piece === ring.outer)
    if (ring.outer === piece) return false
    return holder !== undefined && isGround(holder) && !sheets.includes(ring.outer)
  })
}

/** A panel that is drawn as a frame: its outer edge is the panel's, but it may be a border all the same. */
function frameOfPanel(rings: readonly Ring[], { piece }: FoundPanel): Unread[] {
  const frame = rings.find((ring) => ring.outer === piece && ring.inner)
  if (!piece || !frame) return []
  const why = `A frame of ${frame.width.toFixed(2)} mm runs round everything: taken for the edge of the panel, though it may be a border.`
  return [{ place: { element: 'panel', box: piece.box, source: piece.shape.source }, why, couldBe: ['border'] }]
}

function isHole({ box, corners, shape }: Piece, panel: Piece | undefined): boolean {
  if (!panel) return false
  const diameter = (box.width + box.height) / 2
  if (diameter < HOLE.min || diameter > HOLE.max || Math.abs(box.width - box.height) > ROUND * diameter) return false
  const middle = centreOfBox(box)
  const even = pointsOf(corners).every((p) => Math.abs(distance(p, middle) - diameter / 2) <= ROUND * diameter)
  if (!even || (shape.contours.length > 1 && shape !== panel.shape && !shape.circle)) return false
  const upright = uprightOf(panel.outline, panel.box)
  const [at, plate] = [upright.of(middle), upright.box]
  const fromSide = Math.min(at.x - plate.x, plate.x + plate.width - at.x)
  const fromEnd = Math.min(at.y - plate.y, plate.y + plate.height - at.y)
  return Math.max(fromSide, fromEnd) <= HOLE.fromEdges
}

function remarks(borders: readonly Ring[], inlays: number, holes: readonly Piece[]): Assumption[] {
  const said: Assumption[] = []
  if (borders.length > 0) said.push({ about: 'border', text: 'A drawn border is taken to be raised.' })
  else said.push({ about: 'border', text: 'No border is drawn: the sign is taken to have none.' })
  if (inlays > 0)
    said.push({
      about: 'part',
      text: 'Areas on which other things are drawn are taken for grounds, not for characters.',
    })
  if (holes.length > 0)
    said.push({ about: 'part', text: 'Round shapes near the edges of the panel are taken for mounting holes.' })
  return said
}
