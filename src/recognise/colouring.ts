import { isKnown, type Lettering, type Unknown } from '../sign/sign.js'
import { coloursOf, type Cloud, type Painted, type Pair, type Surface } from './colours.js'
import type { LaidRun } from './layout.js'
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

/** Live text as things that are painted; none where the outlines are unknown. */
export const paintedRuns = (runs: readonly LaidRun[]): Painted[] =>
  runs
    .filter((run) => run.characters.length > 0)
    .map(({ characters, drawn }) => ({
      outlines: characters.flatMap((c) => c.outlines),
      order: drawn.after,
      fill: drawn.fill,
      colourless: drawn.fill && drawn.fill.opacity > 0 ? undefined : NO_FILL,
    }))

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
