import type { Translator } from '../../braille/translator.js'
import { boxOfPoints } from '../../geometry/box.js'
import type { Point } from '../../geometry/point.js'
import { MARGIN, recogniseDots } from '../../recognise/dots-alone.js'
import type { RecogniseOptions } from '../../recognise/recognise.js'
import { declared, missing, type Assumption, type Sign } from '../../sign/sign.js'
import { readProgram } from './read.js'

/** A drilling program as a sign: its dots, read as braille; all else of the sign is not in it. */

export interface ProgramOptions extends RecogniseOptions {
  /** Of the dots as they come out, millimetres; a program does not tell it. */
  dotBaseDiameter?: number
}

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
  const read = recogniseDots(dots, options, translator)
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
