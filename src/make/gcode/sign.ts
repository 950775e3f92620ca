import type { Translator } from '../../braille/translator.js'
import type { Drawing, Shape } from '../../drawing/drawing.js'
import { boxOfPoints } from '../../geometry/box.js'
import type { Contour } from '../../geometry/outline.js'
import type { Point } from '../../geometry/point.js'
import { recognise, type RecogniseOptions } from '../../recognise/recognise.js'
import { declared, missing, type Assumption, type Sign } from '../../sign/sign.js'
import { readProgram } from './read.js'
import type { MadeDot } from './tool.js'

/** A drilling program as a sign: its dots, read as braille; all else of the sign is not in it. */

export interface ProgramOptions extends RecogniseOptions {
  /** Of the dots as they come out, millimetres; a program does not tell it. */
  dotBaseDiameter?: number
}

/** The dots are looked at as circles of a common size, which nothing is measured on. */
const LOOKED_AT = 1.5
/** Left free round the dots, millimetres, where the zero of the program cannot be the corner of the panel. */
const MARGIN = 10

/**
 * @param isDescribed whether a description says what else is on the sign
 * @throws {Refusal} of `readProgram`
 */
export function signOfProgram(
  bytes: Uint8Array,
  options: ProgramOptions,
  isDescribed: boolean,
  translator: Translator,
): Sign {
  const program = readProgram(bytes)
  const shift = shiftOf(program.dots)
  const dots = program.dots.map(({ x, y, line }) => ({ x: x + shift.x, y: y + shift.y, line }))
  const read = recognise(drawingOf(dots), options, translator)
  const isShifted = shift.x !== 0 || shift.y !== 0
  const { dotBaseDiameter } = options
  const notShown = missing('a program shows where the dots are, not how large they become')
  const first = { element: 'program', source: { line: dots[0].line, column: 1 } }
  return {
    ...read,
    braille: read.braille.map((block) => ({
      ...block,
      dotBaseDiameter: dotBaseDiameter === undefined ? notShown : declared(dotBaseDiameter),
    })),
    unread: [...read.unread, ...(isDescribed ? [] : [{ place: first, why: ONLY_DOTS, couldBe: REST }])],
    assumptions: [
      ...program.assumptions,
      { about: 'program', text: isShifted ? FROM_DOTS : FROM_ZERO },
      ...read.assumptions.filter(aboutDots),
    ],
  }
}

const REST: Sign['unread'][number]['couldBe'] = ['lettering', 'pictogram', 'border', 'colour']
const ONLY_DOTS = 'A drilling program shows the dots alone: characters, borders and colours are not in it.'
const FROM_ZERO = 'The zero of the program is taken for the top left corner of the panel, with Y upwards.'
const FROM_DOTS =
  'The zero of the program is not the top left corner of the panel, since dots lie above it or to its left: where they stand on the panel is not known, and places are counted from near the first of them.'

/** What the reading assumed of a drawing that was never one. */
const aboutDots = ({ about }: Assumption): boolean => !['scale', 'panel', 'border', 'pictogram'].includes(about)

/** Moves dots that lie left of the zero or above it into the sheet. */
function shiftOf(dots: readonly Point[]): Point {
  const box = boxOfPoints(dots)
  if (!box || (box.x >= 0 && box.y >= 0)) return { x: 0, y: 0 }
  return { x: MARGIN - box.x, y: MARGIN - box.y }
}

function drawingOf(dots: readonly MadeDot[]): Drawing {
  const box = boxOfPoints(dots) ?? { x: 0, y: 0, width: 0, height: 0 }
  return {
    viewport: { width: box.x + box.width + MARGIN, height: box.y + box.height + MARGIN },
    scale: { millimetresPerUnit: 1, from: 'units' },
    shapes: dots.map(shapeOf),
    texts: [],
    ignored: [],
    assumptions: [],
  }
}

function shapeOf({ x, y, line }: MadeDot): Shape {
  const radius = LOOKED_AT / 2
  return {
    contours: [circleContour({ x, y }, radius)],
    fill: { rgb: [0, 0, 0], opacity: 1, written: 'black' },
    fillRule: 'nonzero',
    source: { line, column: 1 },
    labels: { dataPart: 'braille', names: [] },
    circle: { x, y, radius },
    box: { x: x - radius, y: y - radius, width: LOOKED_AT, height: LOOKED_AT },
  }
}

/** Where the controls of a quarter of a circle lie, in radii: 4/3 tan(π/8), see `drawing/arc.ts`. */
const CONTROL = (4 / 3) * Math.tan(Math.PI / 8)

function circleContour({ x, y }: Point, radius: number): Contour {
  const at = (right: number, down: number): Point => ({ x: x + radius * right, y: y + radius * down })
  const quarters = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ]
  return {
    start: at(1, 0),
    closed: true,
    segments: quarters.map(([right, down]) => ({
      kind: 'cubic',
      c1: at(right - CONTROL * down, down + CONTROL * right),
      c2: at(-down + CONTROL * right, right + CONTROL * down),
      to: at(-down, right),
    })),
  }
}
