import { describe, expect, test } from 'vitest'
import { drawnBorder, drawnSign, rectangle, turned } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** Distances by plain arithmetic on invented signs: dots of 1.55 mm, first row at y = 95, last row at 95 + 10.1 + 4.8. */
const RADIUS = 1.55 / 2
const LOWEST_ROW = 95 + 10.1 + 4.8

describe('braille to raised characters', () => {
  test('described: from the last baseline to the top of the first row of dots', () => {
    expect(valuesOf(signOf(PUMP_ROOM), 'braille.characterClearance')[0]).toBeCloseTo(95 - RADIUS - 70, 9)
  })

  test('drawn: the same, from the outlines', () => {
    const { observations } = measured(drawnSign(), 'braille.characterClearance')
    // The second line has two bars, over x = 20 to 44; the first cell's dots lie below them.
    expect(observations[0]?.value).toBeCloseTo(95 - RADIUS - 70, 9)
    expect(observations[0]?.basis).toBe('drawn')
  })

  test('drawn: slanting distances are true distances', () => {
    const sign = drawnSign()
    const [line] = sign.lettering[0].lines
    const far = { ...sign.lettering[0], lines: [{ ...line, outlines: [rectangle(0, 60, 10, 5)] }] }
    // The bar's corner is (10, 65). "pump room" starts with p (dots 1-2-3-4): the nearest dot is dot 1 at (20, 95).
    expect(valuesOf({ ...sign, lettering: [far] }, 'braille.characterClearance')[0]).toBeCloseTo(
      Math.hypot(10, 30) - RADIUS,
      9,
    )
  })

  test('0 where a dot lies on a character; a dot in a counter is clear of it', () => {
    const sign = drawnSign()
    const [line] = sign.lettering[0].lines
    const on = (outlines: typeof line.outlines) => ({
      ...sign,
      lettering: [{ ...sign.lettering[0], lines: [{ ...line, outlines }] }],
    })
    expect(valuesOf(on([rectangle(15, 90, 10, 10)]), 'braille.characterClearance')).toEqual([0])
    const ring = [rectangle(-100, -100, 500, 500), rectangle(0, 80, 300, 50)]
    // Nearest edge of the counter: its top at y = 80, 15 mm above the first row
    expect(valuesOf(on(ring), 'braille.characterClearance')[0]).toBeCloseTo(15 - RADIUS, 9)
  })

  test('open where the place of one of them is not given, with the place to add it', () => {
    const { gaps, observations } = measured(
      signOf(PUMP_ROOM, { 'braille.0.origin': undefined }),
      'braille.characterClearance',
    )
    expect(observations).toEqual([])
    expect(gaps[0]).toMatchObject({ reason: 'missing-fact', ask: { pointer: '/sign/braille/0/origin', unit: 'mm' } })
    const unsized = signOf(PUMP_ROOM, { 'braille.0.dotBaseDiameter': undefined })
    expect(measured(unsized, 'braille.characterClearance').gaps[0]?.ask?.pointer).toBe(
      '/sign/braille/0/dotBaseDiameter',
    )
  })

  test('open where braille stands to the right of described characters of unknown width', () => {
    const sign = signOf(PUMP_ROOM, { 'braille.0.origin': { x: 200, y: 60 } })
    expect(reasonsOf(sign, 'braille.characterClearance')).toEqual(['missing-fact'])
  })
})

describe('to raised borders', () => {
  test('described frame: from the lowest dots to its inner edge', () => {
    const borders = [{ box: { x: 0, y: 0, width: 400, height: LOWEST_ROW + RADIUS + 7 + 3 }, width: 3, raised: true }]
    expect(valuesOf(signOf(PUMP_ROOM, { borders }), 'braille.borderClearance')[0]).toBeCloseTo(7, 9)
  })

  test('drawn frame: the same, and from the characters edge to edge', () => {
    const sign = drawnSign({ borders: [drawnBorder(5, 5, 400, 300, 4)] })
    // Characters start at x = 20 and y = 20; the inner edges are at x = 9 and y = 9.
    expect(valuesOf(sign, 'raised.borderClearance')[0]).toBeCloseTo(11, 9)
    expect(valuesOf(sign, 'braille.borderClearance')[0]).toBeCloseTo(20 - RADIUS - 9, 9)
    expect(reasonsOf(sign, 'raised.borderClearance')).toEqual([])
  })

  test('a corner of the border that points at a character counts', () => {
    const notch = {
      ...drawnBorder(0, 0, 1, 1, 0.1),
      outlines: [
        [
          { x: 12, y: 30 },
          { x: 0, y: 25 },
          { x: 0, y: 35 },
        ],
      ],
    }
    expect(valuesOf(drawnSign({ borders: [notch] }), 'raised.borderClearance')[0]).toBeCloseTo(8, 9)
  })

  test('described characters: the left end may fail; the right end stays open', () => {
    const borders = [{ box: { x: 10, y: -50, width: 600, height: 400 }, width: 2, raised: true }]
    const sign = signOf(PUMP_ROOM, { borders })
    expect(valuesOf(sign, 'raised.borderClearance')).toEqual([8])
    expect(reasonsOf(sign, 'raised.borderClearance')).toEqual(['missing-fact'])
  })

  test('a border that is not raised is none; one of which that is not said leaves it open', () => {
    const box = { x: 0, y: 0, width: 260, height: 150 }
    const flat = signOf(PUMP_ROOM, { borders: [{ box, width: 2, raised: false }] })
    expect(measured(flat, 'braille.borderClearance')).toMatchObject({
      observations: [],
      gaps: [],
      nothing: 'The sign has no raised border.',
    })
    const unsaid = signOf(PUMP_ROOM, { borders: [{ box, width: 2, raised: true }] })
    const unsure = {
      ...unsaid,
      borders: unsaid.borders.map((b) => ({ ...b, raised: { unknown: 'missing-fact' as const, why: 'not given' } })),
    }
    expect(reasonsOf(unsure, 'braille.borderClearance')).toEqual(['missing-fact'])
  })
})

describe('a sign drawn turned', () => {
  const QUARTERS = [
    { degrees: 90, matrix: { a: 0, b: 1, c: -1, d: 0, e: 300, f: 10 } },
    { degrees: 180, matrix: { a: -1, b: 0, c: 0, d: -1, e: 300, f: 400 } },
    { degrees: 270, matrix: { a: 0, b: -1, c: 1, d: 0, e: -20, f: 500 } },
  ]
  const upright = drawnSign({ borders: [drawnBorder(5, 5, 400, 300, 4)] })

  test.each(QUARTERS)('by $degrees degrees measures the same', ({ degrees, matrix }) => {
    const sign = turned(upright, matrix, degrees)
    for (const quantity of [
      'braille.characterClearance',
      'braille.borderClearance',
      'raised.borderClearance',
      'installation.lowestBaseline',
      'installation.highestBaseline',
    ])
      expect(valuesOf(sign, quantity)[0]).toBeCloseTo(Number(valuesOf(upright, quantity)[0]), 6)
    expect(valuesOf(sign, 'braille.position')).toEqual(['below'])
  })

  test('at an angle, heights above the floor are open', () => {
    const [cos, sin] = [Math.cos(Math.PI / 12), Math.sin(Math.PI / 12)]
    const sign = turned(upright, { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 }, 15)
    expect(reasonsOf(sign, 'installation.lowestBaseline')).toContain('unreadable')
    expect(valuesOf(sign, 'braille.position')).toEqual(['below'])
  })
})
