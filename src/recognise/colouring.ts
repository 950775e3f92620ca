import { isKnown, type Lettering, type Unknown } from '../sign/sign.js'
import { coloursOf, type Cloud, type Painted, type Pair, type Surface } from './colours.js'
import type { Polyline } from '../geometry/outline.js'
import { SHARE_BEFORE_ANCHOR, type LaidRun } from './layout.js'
import type { Piece } from './pieces.js'

/** The colours of lettering, from the shapes or the live text that it was drawn as. */

const HOLES = 'the characters are holes in the path of the panel, so that their colour is that of what lies behind'
const NO_FILL = 'the characters are drawn as lines without a fill'

/** Shapes as things that are painted: each path once, with those of its contours that are characters. */
export function paintedPieces(pieces: readonly Piece[], grounds: readonly Piece[]): Painted[] {
  const byShape = new Map<Piece['shape'], Piece[]>()
  for (const piece of pieces) {
    const own = byShape.get(piece.shape)
    if (own) own.push(piece)
    else byShape.set(piece.shape, [piece])
  }
  const groundShapes = new Set(grounds.map((g) => g.shape))
  return [...byShape].map(([shape, own]) => ({
    outlines: own.map((p) => p.outline),
    order: own[0].order,
    fill: shape.fill,
    colourless: groundShapes.has(shape) ? HOLES : shape.fill && shape.fill.opacity > 0 ? undefined : NO_FILL,
  }))
}

/**
 * Live text as things that are painted. Where the outlines are not known, the fill and what is behind the stretch of the baseline that the
 * text takes up at least are enough for its colours.
 */
export const paintedRuns = (runs: readonly LaidRun[]): Painted[] =>
  runs.flatMap((run): Painted[] => {
    const { characters, drawn } = run
    const outlines = characters.length > 0 ? characters.flatMap((c) => c.outlines) : stretchOf(run)
    const colourless = drawn.fill && drawn.fill.opacity > 0 ? undefined : NO_FILL
    return outlines.length === 0 ? [] : [{ outlines, order: drawn.after, fill: drawn.fill, colourless }]
  })

/** Shares of the em: the mean advance that hardly any typeface falls below, and the height that capitals reach. Estimates of ours. */
const NARROW_ADVANCE = 0.35
const LOW_CAPITALS = 0.6

/** Where a text of unknown outlines surely stands, as one outline; none where its place is not known either. */
function stretchOf({ frame, place, drawn, turned, scattered }: LaidRun): Polyline[] {
  if (!frame || !place || turned || scattered || drawn.unsupported.length > 0) return []
  const { along, emAlong, emAcross, mirrored } = frame
  const length = drawn.text.trim().length * NARROW_ADVANCE * emAlong
  const start = -SHARE_BEFORE_ANCHOR[drawn.textAnchor] * length
  const up = mirrored ? { x: -along.y, y: along.x } : { x: along.y, y: -along.x }
  const at = (share: number, height: number) => ({
    x: place.x + (start + share * length) * along.x + height * emAcross * up.x,
    y: place.y + (start + share * length) * along.y + height * emAcross * up.y,
  })
  const shares = [0, 0.25, 0.5, 0.75, 1]
  return [[...shares.map((share) => at(share, 0)), ...shares.map((share) => at(1 - share, LOW_CAPITALS))]]
}

export function withColours(
  lettering: Lettering,
  things: readonly Painted[],
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): Lettering {
  const { colour, background } = coloursOf(things, surfaces, clouds)
  return { ...lettering, colour, background }
}

/** Colours of outlines that nobody said are characters: a drawing in one colour is made for a machine, not for the eye. */
export function withDoubtfulColours(
  lettering: Lettering,
  things: readonly Painted[],
  surfaces: readonly Surface[],
  clouds: readonly Cloud[],
): Lettering {
  const pair: Pair = coloursOf(things, surfaces, clouds)
  const { colour, background } = pair
  const alike = isKnown(colour) && isKnown(background) && colour.value.css === background.value.css
  return alike ? { ...lettering, colour: ONE_COLOUR, background: ONE_COLOUR } : { ...lettering, ...pair }
}

const ONE_COLOUR: Unknown = {
  unknown: 'needs-judgement',
  why: 'the outlines are painted in the very colour of what is behind them',
}
