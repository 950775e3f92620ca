import { IDENTITY, multiply, scaling, translation, type Matrix } from '../geometry/matrix.js'
import { absoluteUnit } from './length.js'
import { Scanner } from './numbers.js'

/**
 * Transform lists. As an attribute by the grammar of SVG 1.1, 7.6 (bare numbers, separators between functions optional); as a
 * CSS property by CSS Transforms 1 (angles and lengths carry units). A list that breaks the grammar is no transform at all.
 */

type Form = 'attribute' | 'property'

interface Argument {
  value: number
  unit: string
  form: Form
}

/** The map of a list, or undefined when it is not understood. */
export function parseTransform(text: string, form: Form): Matrix | undefined {
  if (text.trim() === 'none') return IDENTITY
  const scanner = new Scanner(text)
  let matrix = IDENTITY
  scanner.skipBlanks()
  let comma = false
  while (!scanner.atEnd) {
    const step = parseFunction(scanner, form)
    if (!step) return undefined
    matrix = multiply(matrix, step)
    comma = scanner.skipSeparator()
  }
  return comma || !Object.values(matrix).every(Number.isFinite) ? undefined : matrix
}

function parseFunction(scanner: Scanner, form: Form): Matrix | undefined {
  const name = scanner.take(/[a-zA-Z]{1,12}/y)
  scanner.skipBlanks()
  if (name === undefined || !scanner.take(/\(/y)) return undefined
  const args: Argument[] = []
  scanner.skipBlanks()
  let comma = false
  while (!scanner.take(/\)/y)) {
    const value = scanner.number()
    if (value === undefined) return undefined
    args.push({ value, unit: form === 'property' ? (scanner.take(/[a-zA-Z]{1,4}/y) ?? '') : '', form })
    comma = scanner.skipSeparator()
  }
  return comma ? undefined : matrixOf(name, args)
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180

/** Exact for the quarter turns, which no floating-point sine is. */
export function rotation(degrees: number): Matrix {
  const turn = ((degrees % 360) + 360) % 360
  const [cos, sin] =
    turn % 90 === 0
      ? [[1, 0, -1, 0][turn / 90], [0, 1, 0, -1][turn / 90]]
      : [Math.cos(radians(degrees)), Math.sin(radians(degrees))]
  return { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 }
}

const DEGREES: Readonly<Record<string, number>> = { deg: 1, grad: 0.9, rad: 180 / Math.PI, turn: 360 }

/** Degrees in one unit of an angle (CSS Values 4, 7.1); NaN for what is none. */
export const degreesIn = (unit: string): number => (Object.hasOwn(DEGREES, unit) ? DEGREES[unit] : NaN)

/** A property needs a unit on everything but 0. */
const isBare = ({ value, unit, form }: Argument): boolean => unit === '' && (form === 'attribute' || value === 0)

const lengthOf = (argument: Argument): number =>
  isBare(argument) ? argument.value : argument.value * (absoluteUnit(argument.unit.toLowerCase()) ?? NaN)
const angleOf = (argument: Argument): number =>
  isBare(argument) ? argument.value : argument.value * degreesIn(argument.unit.toLowerCase())
const numberOf = ({ value, unit }: Argument): number => (unit === '' ? value : NaN)

const ONLY_AS_PROPERTY = /^(translate|scale)[XY]$/

/** Undefined for an unknown name or a wrong number of arguments; a wrong unit gives NaN, which the caller refuses. */
function matrixOf(name: string, args: Argument[]): Matrix | undefined {
  const [first, second, third] = args
  if (ONLY_AS_PROPERTY.test(name) && first?.form === 'attribute') return undefined
  switch (`${name}/${args.length}`) {
    case 'matrix/6': {
      const [a, b, c, d, e, f] = args.map(numberOf)
      return { a, b, c, d, e, f }
    }
    case 'translate/1':
    case 'translate/2':
      return translation(lengthOf(first), second ? lengthOf(second) : 0)
    case 'translateX/1':
      return translation(lengthOf(first), 0)
    case 'translateY/1':
      return translation(0, lengthOf(first))
    case 'scale/1':
    case 'scale/2':
      return scaling(numberOf(first), numberOf(second ?? first))
    case 'scaleX/1':
      return scaling(numberOf(first), 1)
    case 'scaleY/1':
      return scaling(1, numberOf(first))
    case 'rotate/1':
      return rotation(angleOf(first))
    case 'rotate/3': {
      const [x, y] = [lengthOf(second), lengthOf(third)]
      return multiply(translation(x, y), multiply(rotation(angleOf(first)), translation(-x, -y)))
    }
    case 'skewX/1':
      return { ...IDENTITY, c: Math.tan(radians(angleOf(first))) }
    case 'skewY/1':
      return { ...IDENTITY, b: Math.tan(radians(angleOf(first))) }
    default:
      return undefined
  }
}
