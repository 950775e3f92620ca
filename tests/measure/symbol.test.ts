import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

const INCH = 25.4
const symbol = (values: Record<string, unknown>) =>
  signOf(PUMP_ROOM, { pictograms: [{ meaning: 'toilet', ...values }] })

describe('a triangle on a circle', () => {
  const sized = (edge: unknown, diameter: unknown) =>
    symbol({ shape: 'triangle-in-circle', triangleEdge: edge, circleDiameter: diameter })
  const inInches = (edge: number, diameter: number) =>
    valuesOf(sized({ value: edge, unit: 'in' }, { value: diameter, unit: 'in' }), 'symbol.triangleInCircle')

  // Geometry: an equilateral triangle with its corners on a circle of 12 inches has edges of 12 × √3 / 2 = 10.392 inches
  test('lies within a circle of 12 inches up to edges of 10.392 inches', () => {
    expect(inInches(10.392, 12)).toEqual([true])
    expect(inInches(10.393, 12)).toEqual([false])
    expect(inInches(12, 12)).toEqual([false])
  })

  test('with its corners on the rim lies within', () => {
    expect(valuesOf(sized(12 * INCH * (Math.sqrt(3) / 2), 12 * INCH), 'symbol.triangleInCircle')).toEqual([true])
  })

  test('is open without either size, and no matter of other shapes', () => {
    expect(reasonsOf(sized(undefined, 300), 'symbol.triangleInCircle')).toEqual(['missing-fact'])
    expect(reasonsOf(sized(undefined, undefined), 'symbol.triangleInCircle')).toHaveLength(2)
    expect(measured(symbol({ shape: 'circle' }), 'symbol.triangleInCircle').nothing).toContain('no triangle on')
    expect(measured(symbol({}), 'symbol.triangleInCircle').nothing).toContain('no symbol')
  })
})

describe('the sizes of a symbol', () => {
  test.each([
    ['triangleEdge', 'triangle'],
    ['circleDiameter', 'circle'],
    ['thickness', 'other'],
    ['centreHeight', 'triangle'],
    ['doorCentreOffset', 'circle'],
  ])('%s is as described, or asked for', (key, shape) => {
    expect(valuesOf(symbol({ shape, [key]: 20 }), `symbol.${key}`)).toEqual([20])
    const { gaps } = measured(symbol({ shape }), `symbol.${key}`)
    expect(gaps.map(({ ask }) => ask?.pointer)).toEqual([`/sign/pictograms/0/${key}`])
  })

  test('a circle has no edge of a triangle, nor a triangle a diameter', () => {
    expect(measured(symbol({ shape: 'circle' }), 'symbol.triangleEdge').nothing).toContain('no triangle')
    expect(measured(symbol({ shape: 'triangle' }), 'symbol.circleDiameter').nothing).toContain('no circle')
  })
})

describe('pictograms', () => {
  const FIELD = { x: 10, y: 10, width: 150, height: 160 }

  test('have a field and a figure of their own height', () => {
    const sign = symbol({ field: FIELD, figureHeight: 120 })
    expect(valuesOf(symbol({ meaning: 'pump', field: FIELD }), 'pictogram.fieldWidth')).toEqual([150])
    expect(valuesOf(sign, 'pictogram.figureHeight')).toEqual([120])
    expect(measured(symbol({}), 'pictogram.figureHeight').gaps[0]?.ask?.pointer).toBe('/sign/pictograms/0/figureHeight')
  })

  test('a drawn figure is as high as its box; its limit hangs on the viewing distance', () => {
    const sign = symbol({ field: FIELD })
    const [pictogram] = sign.pictograms
    const drawn = { ...sign, pictograms: [{ ...pictogram, figure: { x: 0, y: 0, width: 50, height: 90 } }] }
    const installation = { ...sign.installation, viewingDistance: { value: 1500, basis: 'declared' as const } }
    expect(measured({ ...drawn, installation }, 'pictogram.figureHeight').observations).toMatchObject([
      { value: 90, basis: 'drawn', context: { viewingDistance: 1500 } },
    ])
  })

  test('are counted', () => {
    expect(valuesOf(signOf(PUMP_ROOM), 'pictogram.count')).toEqual([0])
    expect(valuesOf(symbol({}), 'pictogram.count')).toEqual([1])
  })
})
