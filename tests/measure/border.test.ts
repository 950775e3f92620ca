import { describe, expect, test } from 'vitest'
import { failing } from '../judge/verdicts.js'
import { drawnBorder, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** 2010 ADA Standards 703.2.7: raised characters stand 3/8 inch from raised borders. Places and sizes are invented. */

const QUANTITY = 'raised.borderClearance'
const ROW = '703.2.7/border-clearance'

/** One line of characters 50 mm high with its left end at (20, 60), and a bar through, above or beside it. */
const withBar = (box: Record<string, number>, width = 2) =>
  signOf(PUMP_ROOM, {
    'lettering.0.text': 'PUMP',
    'lettering.0.lines': undefined,
    'lettering.0.baselineSpacing': undefined,
    'lettering.0.characterHeight': 50,
    'lettering.0.baseline': { x: 20, y: 60 },
    borders: [{ box, width, raised: true }],
  })

describe('the distance of described characters from a raised border', () => {
  test('is 0 where the border runs through their left edge', () => {
    const sign = withBar({ x: 15, y: 33, width: 100, height: 4 })
    expect(valuesOf(sign, QUANTITY)).toEqual([0])
    expect(failing(sign)).toContain(ROW)
  })

  test('is taken from the nearest point of their left edge, not from its ends', () => {
    const sign = withBar({ x: 5, y: 33, width: 10, height: 4 })
    expect(valuesOf(sign, QUANTITY)).toEqual([5])
    expect(failing(sign)).toContain(ROW)
  })

  test('is taken from the upper end where the border is above, and stays open at the right', () => {
    const sign = withBar({ x: 5, y: -6, width: 300, height: 4 })
    expect(valuesOf(sign, QUANTITY)).toEqual([12])
    expect(reasonsOf(sign, QUANTITY)).toEqual(['missing-fact'])
    expect(failing(sign)).not.toContain(ROW)
  })
})

describe('a described border', () => {
  test('is a frame: what stands in it is as far as its inner edge, on each side', () => {
    expect(valuesOf(withBar({ x: 5, y: -50, width: 300, height: 200 }), QUANTITY)).toEqual([20 - (5 + 2)])
    expect(valuesOf(withBar({ x: -100, y: -50, width: 135, height: 200 }), QUANTITY)).toEqual([35 - 2 - 20])
    expect(valuesOf(withBar({ x: -100, y: -5, width: 300, height: 200 }), QUANTITY)).toEqual([60 - 50 - (-5 + 2)])
    expect(valuesOf(withBar({ x: -100, y: -50, width: 300, height: 120 }), QUANTITY)).toEqual([70 - 2 - 60])
  })

  test('that is so thick that no room is left in it is solid: what stands on it has no distance', () => {
    expect(valuesOf(withBar({ x: -100, y: 5, width: 300, height: 60 }, 60), QUANTITY)).toEqual([0])
    expect(valuesOf(withBar({ x: -10, y: -100, width: 60, height: 300 }, 60), QUANTITY)).toEqual([0])
  })
})

describe('drawn characters', () => {
  // bars 10 mm wide and 20 mm high, the first at (20, 20), the second from x = 34
  const withOutlines = (...outlines: ReturnType<typeof rectangle>[]) =>
    drawnSign({ borders: [{ ...drawnBorder(0, 0, 10, 10, 1), outlines }] })

  test('have no distance where one of them stands on a border, whatever the others do', () => {
    expect(valuesOf(withOutlines(rectangle(15, 15, 17, 30)), QUANTITY)).toEqual([0])
    expect(valuesOf(withOutlines(rectangle(5, 15, 3, 30)), QUANTITY)).toEqual([20 - 8])
  })

  // the number is the project's own: MOST_EDGES
  test('are not held against a border of more edges than are measured', () => {
    const corners = (n: number) => Array.from({ length: n }, (_, i) => ({ x: 5 + i / n, y: i % 2 }))
    expect(reasonsOf(withOutlines(corners(200_000)), QUANTITY)).toEqual(['limit-reached'])
    expect(reasonsOf(withOutlines(corners(2_000)), QUANTITY)).toEqual([])
  })
})

describe('nothing is asked about a border', () => {
  test('that is not there', () => {
    for (const quantity of [QUANTITY, 'braille.borderClearance'])
      expect(measured(signOf(PUMP_ROOM), quantity)).toMatchObject({
        gaps: [],
        nothing: expect.stringContaining('no raised border') as string,
      })
  })

  test('where there are no raised characters', () => {
    const box = { x: 5, y: 5, width: 250, height: 140 }
    const borders = [{ box, width: 2, raised: true }, { box }]
    expect(reasonsOf(signOf(PUMP_ROOM, { borders }), QUANTITY)).toContain('missing-fact')
    expect(reasonsOf(signOf(PUMP_ROOM, { borders, lettering: [] }), QUANTITY)).toEqual([])
  })
})
