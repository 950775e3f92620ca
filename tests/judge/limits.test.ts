import { describe, expect, test } from 'vitest'
import { resolve, resolveByDistance } from '../../src/judge/limits.js'
import type { Observation } from '../../src/measure/measurement.js'
import type { Limit } from '../../src/standards/standard.js'
import { FIRST_ROWS } from './table-703-5-5.js'

/** From what a standard prints to what is compared. One inch is 25.4 mm exactly (international yard and pound agreement of 1959). */
const INCH = 25.4

describe('a printed limit', () => {
  // 2010 ADA Standards, table 703.3.1: 0.241 inch (6.1 mm) to 0.300 inch (7.6 mm); 703.2.1: 1/32 inch (0.8 mm) minimum
  const spacing: Limit = { kind: 'length', in: { min: 0.241, max: 0.3 }, mm: { min: 6.1, max: 7.6 }, printed: 'both' }
  const relief: Limit = { kind: 'length', in: { min: 1 / 32 }, mm: { min: 0.8 }, printed: 'both' }

  test('of lengths is in millimetres, in the unit that the standard puts first', () => {
    expect(resolve(spacing, '703.3.1', 'in')).toEqual({
      kind: 'length',
      min: 0.241 * INCH,
      max: 0.3 * INCH,
      other: { min: 6.1, max: 7.6 },
      unit: 'mm',
      printed: 'both',
      clause: '703.3.1',
    })
    expect(resolve(structuredClone(spacing), '703.3.1', 'mm')).toMatchObject({
      min: 6.1,
      max: 7.6,
      other: { min: 0.241 * INCH, max: 0.3 * INCH },
    })
  })

  test('has no end that is not printed', () => {
    const { max, other } = resolve(relief, '703.2.1', 'in')
    expect([max, other]).toEqual([undefined, { min: 0.8 }])
    expect(resolve(relief, '703.2.1', 'in')).not.toHaveProperty('max')
    expect(other).not.toHaveProperty('max')
  })

  // Invented: a table that puts inches first, with a row of which it prints the millimetres only, and the other way round
  test('stands in the other unit where the first is not printed', () => {
    const millimetres: Limit = { kind: 'length', mm: { min: 6.1 }, printed: '6.1 mm' }
    expect(resolve(millimetres, 'x', 'in')).toEqual({
      kind: 'length',
      min: 6.1,
      unit: 'mm',
      printed: '6.1 mm',
      clause: 'x',
    })
    const inches: Limit = { kind: 'length', in: { max: 2 }, mm: {}, printed: '2 in' }
    expect(resolve(inches, 'x', 'mm')).toEqual({
      kind: 'length',
      max: 2 * INCH,
      unit: 'mm',
      printed: '2 in',
      clause: 'x',
    })
    expect(resolve({ ...inches }, 'x', 'in')).not.toHaveProperty('other')
  })

  // 2010 ADA Standards, table 703.3.1: 0.063 inch (1.6 mm) at most; NLS Specification 800 prints bare figures: 0.092 inch
  test('of one end, or of a bare figure, has its other unit beside it', () => {
    const most: Limit = { kind: 'length', in: { max: 0.063 }, mm: { max: 1.6 }, printed: 'p' }
    expect(resolve(most, 'x', 'in')).toMatchObject({ max: 0.063 * INCH, other: { max: 1.6 } })
    const figure: Limit = { kind: 'nominal', in: 0.092, mm: 2.34, printed: 'p' }
    const [inches, millimetres] = [0.092 * INCH, 2.34]
    expect(resolve(figure, 'x', 'in')).toEqual({
      kind: 'nominal',
      min: inches,
      max: inches,
      other: { min: millimetres, max: millimetres },
      unit: 'mm',
      printed: 'p',
      clause: 'x',
    })
    expect(resolve({ ...figure }, 'x', 'mm')).toMatchObject({ min: millimetres, other: { max: inches } })
    expect(resolve({ kind: 'nominal', in: 0.092, printed: 'p' }, 'x', 'in')).not.toHaveProperty('other')
  })

  // 2010 ADA Standards 703.2.4: 55 percent minimum and 110 percent maximum; ADAAG 1991, A4.30.5: 11 to 19 degree gloss
  test('of a share or a number has its own unit', () => {
    expect(resolve({ kind: 'ratio', min: 0.55, max: 1.1, printed: 'p' }, '703.2.4', 'in')).toEqual({
      kind: 'ratio',
      min: 0.55,
      max: 1.1,
      unit: 'ratio',
      printed: 'p',
      clause: '703.2.4',
    })
    expect(resolve({ kind: 'number', unit: 'gloss-units', min: 11, max: 19, printed: 'p' }, 'A4.30.5', 'in')).toEqual({
      kind: 'number',
      min: 11,
      max: 19,
      unit: 'gloss-units',
      printed: 'p',
      clause: 'A4.30.5',
    })
    expect(resolve({ kind: 'ratio', min: 0.7, printed: 'p' }, 'x', 'in')).not.toHaveProperty('max')
    expect(resolve({ kind: 'ratio', max: 0.7, printed: 'p' }, 'x', 'in')).not.toHaveProperty('min')
    expect(resolve({ kind: 'number', unit: 'lx', min: 300, printed: 'p' }, 'x', 'mm')).not.toHaveProperty('max')
    expect(resolve({ kind: 'number', unit: 'count', max: 5, printed: 'p' }, 'x', 'mm')).not.toHaveProperty('min')
  })

  // 2010 ADA Standards 703.5.1 (finish), 703.2 (wording); ca-csa-b651-2004, table 1, is of heights
  test('of kinds names them, and of a plain yes or a table by distance has no ends', () => {
    const finish: Limit = { kind: 'one-of', pass: ['matte'], judgement: ['satin'], printed: 'non-glare' }
    expect(resolve(finish, '703.5.1', 'in')).toEqual({
      kind: 'one-of',
      pass: ['matte'],
      unit: 'kind',
      printed: 'non-glare',
      clause: '703.5.1',
    })
    expect(resolve({ kind: 'yes', printed: 'p' }, '703.2', 'in')).toEqual({
      kind: 'yes',
      unit: 'truth',
      printed: 'p',
      clause: '703.2',
    })
    const steps: Limit = { kind: 'distance-steps', steps: [{ upTo: 750, min: 25 }], printed: 'p' }
    expect(resolve(steps, 'table1', 'mm')).toEqual({
      kind: 'distance-steps',
      unit: 'mm',
      printed: 'p',
      clause: 'table1',
    })
  })

  test('is the same object each time, but under another clause', () => {
    const first = resolve(spacing, 'a', 'in')
    expect(resolve(spacing, 'a', 'in')).toBe(first)
    expect(resolve(spacing, 'b', 'in')).toMatchObject({ ...first, clause: 'b' })
  })
})

describe('a table by the distance of the reader', () => {
  const limit: Extract<Limit, { kind: 'by-viewing-distance' }> = {
    kind: 'by-viewing-distance',
    bands: FIRST_ROWS,
    printed: 'table',
  }
  const at = (context: Observation['context']) =>
    resolveByDistance(limit, '703.5.5', 'in', { value: 20, basis: 'declared', places: [], context })

  test('gives the height of its row in both units', () => {
    const [only, ...others] = at({ baselineHeight: 1500, viewingDistance: 84 * INCH })
    expect(others).toEqual([])
    expect(only?.min).toBeCloseTo((5 / 8 + 1 / 8) * INCH, 9)
    expect(only?.other?.min).toBeCloseTo(16 + ((84 * INCH - 1830) / 305) * 3.2, 9)
    expect(only).toMatchObject({ kind: 'by-viewing-distance', unit: 'mm', printed: 'table', clause: '703.5.5' })
  })

  test('gives every row where the place of the characters is not known', () => {
    expect(at(undefined).map(({ min }) => min)).toEqual([(5 / 8) * INCH, 2 * INCH])
    expect(at({ baselineHeight: true }).length).toBe(2)
    expect(at({ baselineHeight: 1500, baselineHeightTo: true }).length).toBe(2)
    expect(at({ baselineHeight: true, baselineHeightTo: 1500 }).length).toBe(2)
  })

  test('gives the rows between the least and the greatest height that is possible', () => {
    expect(at({ baselineHeight: 1500, baselineHeightTo: 2000 }).length).toBe(2)
    expect(at({ baselineHeight: 1500, baselineHeightTo: 1600 }).map(({ min }) => min)).toEqual([(5 / 8) * INCH])
    expect(at({ baselineHeight: 1900, baselineHeightTo: 2000 }).map(({ min }) => min)).toEqual([2 * INCH])
  })

  // contract of the service: up to 0.001 mm of arithmetic noise on drawn values is allowed at every limit
  test('allows a drawn height the noise of the arithmetic at the end of a row', () => {
    const above = 70 * INCH + 0.0009
    expect(at({ baselineHeight: above, baselineDrawn: true })[0]?.min).toBeCloseTo((5 / 8) * INCH, 9)
    expect(at({ baselineHeight: above })[0]?.min).toBeCloseTo(2 * INCH, 9)
    expect(at({ baselineHeight: above, baselineDrawn: false })[0]?.min).toBeCloseTo(2 * INCH, 9)
  })

  test('stands in millimetres where no inches are printed', () => {
    const [first] = limit.bands
    const metric = { base: { mm: 16 }, from: { mm: 1830 }, perStep: { mm: 3.2 }, step: { mm: 305 } }
    const [only] = resolveByDistance(
      { ...limit, bands: [{ ...first, ...metric, baselineTo: { mm: 1780 } }] },
      'c',
      'in',
      { value: 20, basis: 'declared', places: [], context: { baselineHeight: 1500, viewingDistance: 1830 + 610 } },
    )
    expect(only?.min).toBeCloseTo(16 + 2 * 3.2, 9)
  })

  // Where 1780 mm are printed beside 70 inches (1778 mm), a height between them is of the second row in inches, of the first in millimetres.
  test('holds each unit to its own row', () => {
    const [only] = at({ baselineHeight: 1779 })
    expect([only?.min, only?.other?.min]).toEqual([2 * INCH, 16])
  })
})
