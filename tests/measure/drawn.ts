import type { Matrix } from '../../src/geometry/matrix.js'
import { apply } from '../../src/geometry/matrix.js'
import { boxOfPoints } from '../../src/geometry/box.js'
import { dotPositions } from '../../src/braille/cells.js'
import type { Point } from '../../src/geometry/point.js'
import { declared, isKnown, missing, type Border, type Known, type Lettering, type Sign } from '../../src/sign/sign.js'
import { PUMP_ROOM, signOf } from './signs.js'

/** Signs as a drawing gives them, made by hand: characters are bars. All sizes are invented. */

export const drawn = <T>(value: T): Known<T> => ({ value, basis: 'drawn' })

export const rectangle = (x: number, y: number, width: number, height: number): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

const BAR = { width: 10, height: 20, step: 14 }

/** The pump room's sign with drawn characters: bars 20 mm high from x = 20, on baselines at y = 40 and 70. */
export function drawnSign(changes: Partial<Sign> = {}): Sign {
  const described = signOf(PUMP_ROOM)
  const bars = (y: number, count: number) =>
    Array.from({ length: count }, (_, i) => rectangle(20 + i * BAR.step, y - BAR.height, BAR.width, BAR.height))
  const lettering: Lettering[] = described.lettering.map((l) => ({
    ...l,
    place: { element: l.place.element },
    lines: l.lines.map((line, i) => ({
      ...line,
      place: { element: line.place.element },
      baseline: drawn({ x: 20, y: 40 + i * 30 }),
      outlines: bars(40 + i * 30, i === 0 ? 8 : 2),
    })),
  }))
  const braille = described.braille.map((block) => ({
    ...block,
    place: { element: block.place.element },
    dotBaseDiameter: isKnown(block.dotBaseDiameter) ? drawn(block.dotBaseDiameter.value) : block.dotBaseDiameter,
  }))
  return { ...described, lettering, braille, ...changes }
}

/** A drawn frame: the outer and the inner edge of a border. */
export const drawnBorder = (x: number, y: number, width: number, height: number, thick: number): Border => ({
  place: { element: 'border/0' },
  box: { x, y, width, height },
  width: drawn(thick),
  raised: drawn(true),
  colour: missing(),
  outlines: [rectangle(x, y, width, height), rectangle(x + thick, y + thick, width - 2 * thick, height - 2 * thick)],
})

/** The same sign drawn turned: every point is mapped, and the braille's reading direction with it. */
export function turned(sign: Sign, matrix: Matrix, degrees: number): Sign {
  const move = (p: Point) => apply(matrix, p)
  const box = sign.panel.place.box
  return {
    ...sign,
    panel: {
      ...sign.panel,
      place: {
        ...sign.panel.place,
        ...(box && { box: boxOfPoints(rectangle(box.x, box.y, box.width, box.height).map(move)) }),
      },
    },
    lettering: sign.lettering.map((l) => ({
      ...l,
      lines: l.lines.map((line) => ({
        ...line,
        outlines: line.outlines.map((outline) => outline.map(move)),
        baseline: isKnown(line.baseline) ? { ...line.baseline, value: move(line.baseline.value) } : line.baseline,
      })),
    })),
    braille: sign.braille.map((block) => ({
      ...block,
      rotation: degrees,
      lines: block.lines.map((line) => ({
        ...line,
        dots: line.dots.map(move),
        baseline: isKnown(line.baseline) ? { ...line.baseline, value: move(line.baseline.value) } : line.baseline,
      })),
    })),
    borders: sign.borders.map((border) => ({ ...border, outlines: border.outlines.map((o) => o.map(move)) })),
  }
}

export const known = declared

/** Dot centres of one line of cells at common spacings. */
export const dotsAt = (cells: string, x: number, y: number): Point[] =>
  dotPositions([cells], { dotSpacing: 2.4, cellSpacing: 6.9, lineSpacing: 10.1, origin: { x, y } })
