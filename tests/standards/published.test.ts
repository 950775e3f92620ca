import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from '../measure/signs.js'
import { judgementBy } from './judged.js'

/** Examples that others have worked out, on the tables. What the signs say beside is invented. */

describe('luminance contrast of 30 percent in Australia', () => {
  const verdict = (characters: number, background: number) =>
    judgementBy(
      'au-ncc-2022',
      'S15C4.b/contrast',
      signOf(PUMP_ROOM, { 'lettering.0.colour': { lrv: characters }, 'panel.colour': { lrv: background } }),
    ).verdict

  // "LRV 20 needs about 7 or about 41": https://accessarchitects.com.au/calculators/luminance-contrast-calculator, citing AS 1428.1-2021
  test.each([
    [20, 7, 'pass'],
    [41, 20, 'pass'],
    [20, 8, 'fail'],
    [40, 20, 'fail'],
  ])('reflectance %d with %d: %s', (a, b, expected) => {
    expect(verdict(a, b)).toBe(expected)
    expect(verdict(b, a)).toBe(expected)
  })
})

describe('domes of the Australian Braille Authority', () => {
  const verdicts = (dotBaseDiameter: number, dotHeight: number) => {
    const sign = signOf(PUMP_ROOM, { 'braille.0.dotBaseDiameter': dotBaseDiameter, 'braille.0.dotHeight': dotHeight })
    return ['dot-base-diameter', 'dot-height', 'dome-radius'].map(
      (row) => judgementBy('au-aba', `dots/${row}`, sign).verdict,
    )
  }

  // worked by hand from r = (d²/4 + h²) / 2h: 0.750, 0.833 and 0.787 mm against 0.76 to 0.81 mm
  test.each([
    [1.5, 0.75, 'fail'],
    [1.6, 0.6, 'fail'],
    [1.55, 0.65, 'pass'],
  ])('a base of %d mm and a height of %d mm are each allowed; together: %s', (base, height, together) => {
    expect(verdicts(base, height)).toEqual(['pass', 'pass', together])
  })
})

describe('a dot spacing of 0.100 inch', () => {
  const verdict = (id: string, row: string, dotSpacing: number) =>
    judgementBy(id, row, signOf(PUMP_ROOM, { 'braille.0.dotSpacing': dotSpacing })).verdict

  // table 703.3.1 of the 2010 ADA Standards ends where table 11B-703.3.1 of the California Building Code stands
  test('is the only one that California and the federal table both pass', () => {
    expect(verdict('us-ada-2010', '703.3.1/dot-spacing', 2.54)).toBe('pass')
    expect(verdict('us-ca-2019', '11B.703.3.1/dot-spacing', 2.54)).toBe('pass')
    expect(verdict('us-ca-2019', '11B.703.3.1/dot-spacing', 2.4)).toBe('undetermined')
    expect(verdict('us-ada-2010', '703.3.1/dot-spacing', 2.55)).toBe('fail')
    expect(verdict('us-ca-2019', '11B.703.3.1/dot-spacing', 2.55)).toBe('fail')
  })
})

test('braille on paper by NLS 800 fails no row as a named geometry, and fails the 2010 ADA Standards by its dots', () => {
  const inches = { dotHeight: 0.019, dotBaseDiameter: 0.057, dotSpacing: 0.092, cellSpacing: 0.245, lineSpacing: 0.4 }
  const sign = signOf(
    PUMP_ROOM,
    Object.fromEntries(Object.entries(inches).map(([size, value]) => [`braille.0.${size}`, { value, unit: 'in' }])),
  )
  const slugs = ['dot-height', 'dot-base-diameter', 'dot-spacing', 'cell-spacing', 'line-spacing']
  const of = (id: string, clause: string) => slugs.map((slug) => judgementBy(id, `${clause}/${slug}`, sign).verdict)
  expect(of('nls-800', '3.2')).toEqual(['pass', 'pass', 'pass', 'pass', 'pass'])
  expect(of('us-ada-2010', '703.3.1')).toEqual(['fail', 'fail', 'pass', 'pass', 'pass'])
})
