import { describe, expect, test } from 'vitest'
import { failing } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { reasonsOf, valuesOf } from './values.js'

/** 2010 ADA Standards 703.2.7: raised characters stand 3/8 inch from raised borders. Places and sizes are invented. */

const QUANTITY = 'raised.borderClearance'
const ROW = '703.2.7/border-clearance'

/** One line of characters 50 mm high with its left end at (20, 60), and a bar through, above or beside it. */
const withBar = (box: Record<string, number>) =>
  signOf(PUMP_ROOM, {
    'lettering.0.text': 'PUMP',
    'lettering.0.lines': undefined,
    'lettering.0.baselineSpacing': undefined,
    'lettering.0.characterHeight': 50,
    'lettering.0.baseline': { x: 20, y: 60 },
    borders: [{ box, width: 2, raised: true }],
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
