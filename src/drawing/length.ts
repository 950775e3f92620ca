import { Scanner } from './numbers.js'

/** Lengths with units (CSS Values 4, 5 and 6: absolute units are fixed multiples of the px, of which 96 are an inch). */

export const MILLIMETRES_PER_INCH = 25.4
export const PX_PER_INCH = 96
export const MILLIMETRES_PER_PX = MILLIMETRES_PER_INCH / PX_PER_INCH

const POINTS_PER_INCH = 72
const PICAS_PER_INCH = 6
const QUARTERS_PER_MILLIMETRE = 4

/** px in one of each absolute unit. */
const ABSOLUTE: Readonly<Record<string, number>> = {
  px: 1,
  in: PX_PER_INCH,
  cm: (10 * PX_PER_INCH) / MILLIMETRES_PER_INCH,
  mm: PX_PER_INCH / MILLIMETRES_PER_INCH,
  q: PX_PER_INCH / MILLIMETRES_PER_INCH / QUARTERS_PER_MILLIMETRE,
  pt: PX_PER_INCH / POINTS_PER_INCH,
  pc: PX_PER_INCH / PICAS_PER_INCH,
}

/** `ex` and `ch` without knowing the font: half an em (CSS Values 4, 5.1.1). */
const HALF_EM = 0.5

/** What relative lengths are relative to, in user units. */
export interface LengthContext {
  /** The nearest viewport; a side that is not known has no percentages. */
  viewport: { width?: number; height?: number }
  fontSize: number
  rootFontSize: number
}

export type Axis = 'x' | 'y' | 'diagonal'

/** A number with its unit in lower case, `''` for none; undefined when the text is anything else. */
export function splitLength(text: string): { value: number; unit: string } | undefined {
  const scanner = new Scanner(text)
  scanner.skipBlanks()
  const value = scanner.number()
  if (value === undefined) return undefined
  const unit = scanner.take(/%|[a-zA-Z]{1,4}/y) ?? ''
  scanner.skipBlanks()
  return scanner.atEnd ? { value, unit: unit.toLowerCase() } : undefined
}

/** px in one `unit` when it is an absolute one. */
export const absoluteUnit = (unit: string): number | undefined =>
  Object.hasOwn(ABSOLUTE, unit) ? ABSOLUTE[unit] : undefined

/** Most lengths are a short number and nothing else. */
const PLAIN = /^-?\d{1,15}(?:\.\d{1,15})?$/

/** A length in user units; undefined when it is not understood, not finite, or relative to something that is not known. */
export function parseLength(text: string, axis: Axis, context: LengthContext): number | undefined {
  if (PLAIN.test(text)) return Number(text)
  const split = splitLength(text)
  if (!split) return undefined
  const factor = split.unit === '' ? 1 : (absoluteUnit(split.unit) ?? relativeUnit(split.unit, axis, context))
  const length = factor === undefined ? NaN : split.value * factor
  return Number.isFinite(length) ? length : undefined
}

function relativeUnit(unit: string, axis: Axis, context: LengthContext): number | undefined {
  switch (unit) {
    case 'em':
      return context.fontSize
    case 'rem':
      return context.rootFontSize
    case 'ex':
    case 'ch':
      return context.fontSize * HALF_EM
    case '%': {
      const whole = wholeAlong(axis, context.viewport)
      return whole === undefined ? undefined : whole / 100
    }
    default:
      return undefined
  }
}

/** What 100 % is: SVG 1.1, 7.10, along neither axis the diagonal divided by the square root of 2. */
function wholeAlong(axis: Axis, { width, height }: LengthContext['viewport']): number | undefined {
  if (axis === 'x') return width
  if (axis === 'y') return height
  return width === undefined || height === undefined ? undefined : Math.hypot(width, height) / Math.SQRT2
}

/** A list of lengths, as `x`, `y`, `dx` and `dy` of text have; undefined entries were not understood. */
export const parseLengths = (text: string, axis: Axis, context: LengthContext): (number | undefined)[] =>
  text
    .trim()
    .split(/[\s,]+/)
    .filter((part) => part !== '')
    .map((part) => parseLength(part, axis, context))
