import type { Drawing } from '../drawing/drawing.js'
import { boxContains, centreOfBox, type Box } from '../geometry/box.js'
import { boxOfContour } from '../geometry/curve.js'
import { apply } from '../geometry/matrix.js'
import type { Point } from '../geometry/point.js'
import { Refusal, type Fault } from '../refusal.js'
import { holds, holdsPiece, type Holder, type Piece } from './pieces.js'

/**
 * Several panels on one sheet: each is a sign of its own, and a check is about one sign. Panels are several when they lie apart
 * and each holds lettering or braille: any that were named panels, and of outlines that nobody named those that hold both.
 */
export interface PanelOnSheet {
  piece: Piece
  /** From 1, by rows from the top and from the left within a row. */
  number: number
  /** Id or name that no other of them has. */
  name?: string
}

/** What a sheet holds that tells panels apart. */
export interface OnSheet {
  holders: readonly Holder[]
  /** Outlines that were named panels. */
  named: readonly Piece[]
  /** Middles of lines of lettering. */
  lettering: readonly Point[]
  /** Middles of dots in braille blocks. */
  dots: readonly Point[]
}

/** Outlines of one panel that was drawn twice lie as near as this, in shares of its size. */
const SAME_OUTLINE = 0.02

/** The panels on a sheet, when they are several; else none. */
export function panelsOn({ holders, named, lettering, dots }: OnSheet): PanelOnSheet[] {
  const hasLettering = (piece: Piece) => lettering.some((p) => holds(piece, p))
  const hasBraille = (piece: Piece) => dots.some((p) => holds(piece, p))
  const said = apart(named.filter((piece) => hasLettering(piece) || hasBraille(piece)))
  const found =
    named.length > 0
      ? said
      : apart(holders.map(({ piece }) => piece).filter((piece) => hasLettering(piece) && hasBraille(piece)))
  return found.length < 2 ? [] : numbered(found)
}

/** The outermost outlines that lie beside each other; what lies round them is the sheet. */
function apart(pieces: readonly Piece[]): Piece[] {
  const single = pieces.filter((p, i) => !pieces.slice(0, i).some((before) => alike(before.box, p.box)))
  let left = single
  while (left.length > 0) {
    const inner = left
    const outermost = inner.filter((p) => !inner.some((other) => other !== p && holdsPiece(other, p)))
    if (outermost.length !== 1) return outermost
    left = inner.filter((p) => p !== outermost[0])
  }
  return []
}

function alike(a: Box, b: Box): boolean {
  const slack = SAME_OUTLINE * Math.max(a.width, a.height)
  return boxContains(a, b, slack) && boxContains(b, a, slack)
}

function numbered(pieces: readonly Piece[]): PanelOnSheet[] {
  const rows: Piece[][] = []
  for (const piece of [...pieces].sort((a, b) => a.box.y - b.box.y)) {
    const row = rows.find(([first]) => centreOfBox(piece.box).y <= first.box.y + first.box.height)
    if (row) row.push(piece)
    else rows.push([piece])
  }
  const ordered = rows.flatMap((row) => row.sort((a, b) => a.box.x - b.box.x))
  const namesOf = ({ shape }: Piece) => [...(shape.source.id ? [shape.source.id] : []), ...shape.labels.names]
  return ordered.map((piece, i) => ({
    piece,
    number: i + 1,
    name: namesOf(piece).find((name) => ordered.every((other) => other === piece || !namesOf(other).includes(name))),
  }))
}

/**
 * The panel that the client chose, by its number or by a name that only it has.
 * @throws {Refusal} `several-signs` when none was chosen or there is no such panel.
 */
export function choosePanel(panels: readonly PanelOnSheet[], wanted: string | number | undefined): PanelOnSheet {
  const chosen = panels.find(
    ({ number, name }) => wanted !== undefined && (`${number}` === `${wanted}` || name === `${wanted}`),
  )
  if (chosen) return chosen
  const none = wanted === undefined ? '' : `There is no panel “${wanted}” on the sheet. `
  throw new Refusal(
    'several-signs',
    `${none}The drawing holds ${panels.length} panels, each with lettering or braille of its own, and a check is about one sign. ` +
      'Choose one with the option `panel`: its number or its id as listed. If they are parts of one sign, name the outline ' +
      'that holds them with data-part="panel".',
    panels.map(faultOf),
  )
}

/** @throws {Refusal} always: a panel was chosen where there are not several. */
export function refusePanel(wanted: string | number): never {
  throw new Refusal(
    'several-signs',
    `The option \`panel\` asks for panel “${wanted}”, but the drawing does not hold several panels. Leave the option out.`,
  )
}

function faultOf({ piece: { box, shape }, number, name }: PanelOnSheet): Fault {
  const [x, y, width, height] = [box.x, box.y, box.width, box.height].map((v) => v.toFixed(1))
  const called = name === undefined ? '' : `, “${name}”`
  const { line, column } = shape.source
  return {
    detail: `Panel ${number}${called}: ${width} mm × ${height} mm, its left top at ${x} mm, ${y} mm.`,
    line,
    column,
  }
}

/** The drawing with nothing but what lies on one panel, and the panel itself. */
export function onPanel(drawing: Drawing, { piece }: PanelOnSheet): Drawing {
  const lies = (box: Box) => boxContains(piece.box, box, Number.EPSILON) && holds(piece, centreOfBox(box))
  const kept = drawing.shapes.map((shape) => {
    const contours = shape.contours.filter((c) => c === piece.contour || lies(boxOfContour(c)))
    return contours.length === shape.contours.length ? shape : { ...shape, contours, circle: undefined }
  })
  let left = 0
  const before = [0, ...kept.map(({ contours }) => (left += contours.length > 0 ? 1 : 0))]
  let last: Point | undefined
  const texts = drawing.texts.filter((text) => {
    const [first] = text.positions
    if (!text.continues || first?.x !== undefined || !last)
      last = apply(text.matrix, { x: first?.x ?? 0, y: first?.y ?? 0 })
    return holds(piece, last)
  })
  return {
    ...drawing,
    shapes: kept.filter(({ contours }) => contours.length > 0),
    texts: texts.map((text) => ({ ...text, after: before[text.after] })),
    ignored: drawing.ignored.filter(({ box }) => !box || holds(piece, centreOfBox(box))),
  }
}
