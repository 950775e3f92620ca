import type { Drawing } from '../drawing/drawing.js'
import type { Box } from '../geometry/box.js'
import { missing, type Assumption, type Panel } from '../sign/sign.js'
import { colourOf } from './rgb.js'
import type { Ring } from './borders.js'
import type { Holder, Piece } from './pieces.js'
import { cornersOf, uprightOf } from '../geometry/upright.js'

/**
 * The panel: what the request or a name says is one; else the outermost outline that holds nearly everything, but for the
 * sheet that the drawing lies on. Only the first is certain, so the rest is said among the assumptions.
 */
export interface FoundPanel {
  panel: Panel
  piece?: Piece
  /** Larger outlines round the panel: the sheet. */
  sheets: Piece[]
  assumptions: Assumption[]
}

/** An outline that reaches this near to all edges of the drawing may be its sheet, as a share of the larger side. */
const AT_THE_EDGE = 0.01

export function findPanel(
  holders: readonly Holder[],
  rings: readonly Ring[],
  drawing: Drawing,
  named: readonly Piece[],
): FoundPanel {
  const said = largest(named)
  if (said)
    return {
      panel: panelOf(said, `${said.named?.how ?? 'the client'} says so`),
      piece: said,
      sheets: [],
      assumptions: [],
    }
  const chain = holders.filter((h) => h.nearlyAll).map((h) => h.piece)
  const inRing = (piece: Piece) => rings.some((r) => r.outer === piece || r.inner === piece)
  const solids = chain.filter((piece) => !inRing(piece))
  const outlines = chain.filter((piece) => rings.some((r) => r.outer === piece))
  const piece = innermostButSheets(solids, drawing.viewport) ?? innermostButSheets(outlines, drawing.viewport)
  if (!piece) {
    return {
      panel: noPanel(),
      sheets: [],
      assumptions: [
        {
          about: 'panel',
          text: 'No outline holds everything that is drawn: the panel is not drawn, and its size and colour are not known.',
        },
      ],
    }
  }
  const sheets = chain.slice(0, chain.indexOf(piece))
  const beside = sheets.length > 0 ? ' A larger one round it is taken for the sheet.' : ''
  const { width, height } = uprightOf(piece.outline, piece.box).box
  const size = `${width.toFixed(1)} mm × ${height.toFixed(1)} mm`
  const text = `The outline of ${size} that holds what is drawn is taken for the panel.${beside}`
  return { panel: panelOf(piece, 'from the geometry'), piece, sheets, assumptions: [{ about: 'panel', text }] }
}

const largest = (pieces: readonly Piece[]): Piece | undefined =>
  pieces.reduce<Piece | undefined>(
    (a, b) => (a && a.box.width * a.box.height >= b.box.width * b.box.height ? a : b),
    undefined,
  )

/** The outermost, unless it is as large as the drawing and another one lies on it. */
function innermostButSheets(chain: readonly Piece[], viewport: Drawing['viewport']): Piece | undefined {
  const inner = chain.findIndex((piece) => !fills(piece.box, viewport))
  return inner >= 0 ? chain[inner] : chain.at(-1)
}

function fills(box: Box, { width, height }: Drawing['viewport']): boolean {
  const slack = AT_THE_EDGE * Math.max(width, height)
  return box.x <= slack && box.y <= slack && box.x + box.width >= width - slack && box.y + box.height >= height - slack
}

const NO_EDGE = 'a drawing does not say how the edge of the panel feels'

function panelOf(piece: Piece, how: string): Panel {
  const { box, outline, shape } = piece
  const upright = uprightOf(outline, box)
  const { width, height } = upright.box
  const rgb = shape.fill && shape.fill.opacity === 1 ? shape.fill.rgb : undefined
  const method = `box of the panel's outline, ${how}`
  return {
    place: { element: 'panel', box, source: shape.source },
    ...(upright.rotation !== 0 && { turned: { rotation: upright.rotation, corners: cornersOf(upright) } }),
    width: { value: width, basis: 'drawn', method },
    height: { value: height, basis: 'drawn', method },
    finish: missing('a drawing does not say the finish'),
    colour: rgb
      ? { value: colourOf(rgb), basis: 'drawn', method: 'fill of the panel' }
      : missing('the panel has no plain fill'),
    edge: missing(NO_EDGE),
  }
}

function noPanel(): Panel {
  const nowhere = missing('no panel is drawn')
  return {
    place: { element: 'panel' },
    width: nowhere,
    height: nowhere,
    finish: missing('a drawing does not say the finish'),
    colour: nowhere,
    edge: missing(NO_EDGE),
  }
}
