import { isKnown, type Fact, type Pictogram, type SymbolShape, type SymbolSizes } from '../sign/sign.js'
import { basisOf, gapOf, join, nothing, pointerOf, take } from './facts.js'
import type { Gap } from './measurement.js'
import type { Found, Quantities, Quantity, Subject } from './quantity.js'

/**
 * Symbols that are told by their outline: the triangle, the circle and the triangle on a circle at toilet doors (California Building
 * Code 2010, 1115B.6, carried on as 11B-703.7.2.6). The largest equilateral triangle in a circle has its corners on the rim, and its
 * edge is the diameter times half the root of three.
 */

const NO_SYMBOL = 'The sign has no symbol that is told by its outline.'

const ASKS: Record<keyof SymbolSizes, string> = {
  triangleEdge: 'How long is the edge of the triangle?',
  circleDiameter: 'How wide is the circle?',
  thickness: 'How thick is the symbol?',
  centreHeight: 'How high above the finish floor is the centre of the symbol?',
  doorCentreOffset: 'How far is the centre of the symbol from the upright centreline of the door?',
}

const eachSymbol =
  (shapes: readonly SymbolShape[], none: string, measure: (symbol: Pictogram, n: number) => Found) =>
  ({ sign }: Subject): Found =>
    join(
      sign.pictograms.map((pictogram, n) => {
        if (pictogram.shape === undefined) return nothing(NO_SYMBOL)
        return shapes.includes(pictogram.shape) ? measure(pictogram, n) : nothing(none)
      }),
      NO_SYMBOL,
    )

const askOf = ({ place }: Pictogram, n: number, key: keyof SymbolSizes) => ({
  pointer: pointerOf(place, 'pictograms', n, key),
  ask: ASKS[key],
  unit: 'mm' as const,
})

const sized =
  (key: keyof SymbolSizes) =>
  (pictogram: Pictogram, n: number): Found =>
    take(pictogram.symbol[key], pictogram.place, askOf(pictogram, n, key))

/** Edge of the largest equilateral triangle in a circle, over the circle's diameter. */
const LARGEST_EDGE = Math.sqrt(3) / 2

/** What the arithmetic of declared lengths may be off, in millimetres. */
const FLOATING_NOISE = 1e-9

function triangleInCircle(pictogram: Pictogram, n: number): Found {
  const { triangleEdge, circleDiameter } = pictogram.symbol
  if (!isKnown(triangleEdge) || !isKnown(circleDiameter))
    return {
      observations: [],
      gaps: [...missing(triangleEdge, 'triangleEdge'), ...missing(circleDiameter, 'circleDiameter')],
    }
  const most = LARGEST_EDGE * circleDiameter.value
  return {
    observations: [
      {
        value: triangleEdge.value <= most + FLOATING_NOISE,
        basis: basisOf(triangleEdge, circleDiameter),
        places: [pictogram.place],
        context: { triangleEdge: triangleEdge.value, circleDiameter: circleDiameter.value, largestEdge: most },
        remark: `The largest triangle in this circle has edges of ${most.toFixed(1)} mm.`,
      },
    ],
    gaps: [],
  }

  function missing(fact: Fact<number>, key: keyof SymbolSizes): Gap[] {
    return isKnown(fact) ? [] : [gapOf(fact, pictogram.place, askOf(pictogram, n, key))]
  }
}

const WITH_TRIANGLE: readonly SymbolShape[] = ['triangle', 'triangle-in-circle']
const WITH_CIRCLE: readonly SymbolShape[] = ['circle', 'triangle-in-circle']
const ANY: readonly SymbolShape[] = ['triangle', 'circle', 'triangle-in-circle', 'other']

const row = (unit: Quantity['unit'], method: string, take: Quantity['take']): Quantity => ({
  unit,
  method,
  couldBe: ['pictogram'],
  doubt: 'more',
  take,
})

export const SYMBOL: Quantities = {
  'symbol.triangleEdge': row(
    'mm',
    'Along an edge of the triangle.',
    eachSymbol(WITH_TRIANGLE, 'The symbol has no triangle.', sized('triangleEdge')),
  ),
  'symbol.circleDiameter': row(
    'mm',
    'Across the circle.',
    eachSymbol(WITH_CIRCLE, 'The symbol has no circle.', sized('circleDiameter')),
  ),
  'symbol.thickness': row(
    'mm',
    'From the back to the face of the symbol.',
    eachSymbol(ANY, NO_SYMBOL, sized('thickness')),
  ),
  'symbol.centreHeight': row(
    'mm',
    'From the finish floor up to the centre of the symbol.',
    eachSymbol(ANY, NO_SYMBOL, sized('centreHeight')),
  ),
  'symbol.doorCentreOffset': row(
    'mm',
    'From the centre of the symbol to the upright centreline of the door.',
    eachSymbol(ANY, NO_SYMBOL, sized('doorCentreOffset')),
  ),
  'symbol.triangleInCircle': row(
    'truth',
    'The corners of the triangle against the rim of the circle.',
    eachSymbol(['triangle-in-circle'], 'The symbol is no triangle on a circle.', triangleInCircle),
  ),
}
