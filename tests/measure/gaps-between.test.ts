import { describe, expect, test } from 'vitest'
import { missing, type Border, type Lettering, type Sign } from '../../src/sign/sign.js'
import { dotsAt, drawn, drawnBorder, drawnSign, rectangle, turned } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, valuesOf } from './values.js'

/**
 * Distances from dots to characters, to borders and to the edges of the panel, by plain arithmetic on invented places (2010 ADA Standards
 * 703.3.2, 703.2.7; NCC 2022, S15C6, as reported). Dots are 1.55 mm wide, 2.4 mm apart in a cell; the first row is at y = 95.
 */

type Json = Record<string, unknown>
const RADIUS = 1.55 / 2
const BLOCK = (PUMP_ROOM.braille as Json[])[0]
const one = (text: string, x: number, y: number): Json => ({
  ...BLOCK,
  lines: [text],
  lineSpacing: undefined,
  origin: { x, y },
})

describe('dots to characters', () => {
  const CLEAR = 'braille.characterClearance'
  const at = (x: number, y: number, values: Json = {}) =>
    measured(signOf(PUMP_ROOM, { 'braille.0.origin': { x, y }, ...values }), CLEAR)

  test('of a description: along a line whose end is not known, the distance is that or more', () => {
    // The first baseline is at 40, the second at 70, 20 mm high each; least width of a line: its strokes and gaps
    const { observations } = at(200, 95)
    expect(observations).toHaveLength(1)
    expect(observations[0]?.value).toBeCloseTo(25 - RADIUS, 9)
    expect(observations[0]).toMatchObject({
      basis: 'declared',
      places: [{ element: 'braille/0' }, { element: 'lettering/0' }],
      remark: expect.stringContaining('this or more') as string,
      atLeast: { reason: 'missing-fact', ask: { pointer: '/drawing' } },
    })
  })

  test('of a description: under the least width of a line the distance is that and no more', () => {
    const [only] = at(20, 95).observations
    expect(only?.value).toBeCloseTo(25 - RADIUS, 9)
    expect(only).not.toHaveProperty('atLeast')
    expect(only).not.toHaveProperty('remark')
    // to the left of the characters the way slants to the corner of the last line
    expect(
      at(0, 95, { 'braille.0.lines': ['a'], 'braille.0.lineSpacing': undefined }).observations[0]?.value,
    ).toBeCloseTo(Math.hypot(20 - RADIUS, 25 - RADIUS), 9)
  })

  // No character is narrower than its stroke of 2.6 mm, and they are 4 mm apart: “12” reaches 9.2 mm, “PUMP ROOM” 48.8 mm
  test('a line reaches as far as its strokes and gaps do at least', () => {
    const short = { 'lettering.0.lines': undefined, 'lettering.0.text': '12', 'lettering.0.baselineSpacing': undefined }
    const beside = (x: number) =>
      at(x, 70, { ...short, ...{ 'braille.0.lines': ['a'], 'braille.0.lineSpacing': undefined } }).observations[0]
    expect(beside(20 + 9.2 + RADIUS - 0.01)).not.toHaveProperty('atLeast')
    expect(beside(20 + 9.2 + RADIUS + 0.01)).toHaveProperty('atLeast')
  })

  test('of a description: beside characters of unknown width nothing is known', () => {
    expect(at(200, 30)).toMatchObject({ observations: [], gaps: [{ places: [{ element: 'lettering/0' }] }] })
  })

  test('of a drawing without outlines: what hangs below the baseline comes nearer', () => {
    const sign = signOf(PUMP_ROOM)
    const hanging = (lines: Lettering['lines']): Sign => ({
      ...sign,
      lettering: sign.lettering.map((set) => ({ ...set, lie: { rotation: 0, mirrored: false }, lines })),
    })
    const [set] = sign.lettering
    expect(measured(hanging(set.lines), CLEAR).observations).toMatchObject([
      {
        atMost: { reason: 'missing-fact', places: [{ element: 'lettering/0' }], ask: { pointer: '/drawing' } },
        remark: expect.stringContaining('reach below') as string,
      },
    ])
    const [first, second] = set.lines
    const some = hanging([{ ...first, outlines: [rectangle(20, 20, 60, 20)] }, second])
    const { observations, gaps } = measured(some, CLEAR)
    expect(observations[0]?.value).toBeCloseTo(95 - RADIUS - 40, 9)
    expect(gaps).toMatchObject([{ why: expect.stringContaining('below their baseline') as string }])
    const all = hanging(set.lines.map((line) => ({ ...line, outlines: [rectangle(20, 20, 60, 20)] })))
    expect(measured(all, CLEAR).gaps).toEqual([])
  })

  test('without a place of the characters asks for it', () => {
    const { gaps } = at(20, 95, { 'lettering.0.baseline': undefined })
    expect(gaps).toMatchObject([
      { ask: { pointer: '/sign/lettering/0/baseline' }, places: [{ element: 'lettering/0' }] },
    ])
    expect(measured(signOf(PUMP_ROOM, { lettering: [] }), CLEAR).nothing).toBe('The sign has no raised characters.')
  })
})

describe('dots to the edges of the panel and to the text', () => {
  const values = (quantity: string, braille: Json[], more: Json = {}) =>
    valuesOf(signOf(PUMP_ROOM, { braille, ...more }), quantity)

  test('each block has its own ways to the edges, with their places', () => {
    const [left, right] = values('braille.leftOffset', [one('pump', 20, 95), one('room', 100, 95)])
    expect(left).toBeCloseTo(20 - RADIUS, 9)
    expect(right).toBeCloseTo(100 - RADIUS, 9)
    const { observations } = measured(signOf(PUMP_ROOM), 'braille.bottomOffset')
    expect(observations).toMatchObject([
      { basis: 'declared', places: [{ element: 'braille/0' }, { element: 'panel' }] },
    ])
  })

  test('a sign turned on its side has the same', () => {
    const sign = drawnSign()
    const box = { x: 0, y: 0, width: 260, height: 150 }
    const placed = { ...sign, panel: { ...sign.panel, place: { element: 'panel', box } } }
    const quarter = turned(placed, { a: 0, b: 1, c: -1, d: 0, e: 300, f: 10 }, 90)
    for (const quantity of ['braille.leftOffset', 'braille.bottomOffset', 'braille.textGap'])
      expect(Number(valuesOf(quarter, quantity)[0])).toBeCloseTo(Number(valuesOf(placed, quantity)[0]), 6)
    expect(measured(placed, 'braille.bottomOffset').observations[0]?.basis).toBe('drawn')
  })

  test('of two blocks for one text the upper one is measured', () => {
    const two = [one('pump', 20, 95), one('room 12', 20, 120)]
    const found = measured(signOf(PUMP_ROOM, { braille: two }), 'braille.textGap').observations
    expect(found).toHaveLength(1)
    expect(found[0]?.value).toBeCloseTo(25 - RADIUS, 9)
    const swapped = [one('pump', 20, 120), one('room 12', 20, 95)]
    expect(measured(signOf(PUMP_ROOM, { braille: swapped }), 'braille.textGap').observations.length).toBeLessThan(3)
  })

  test('a gap has its places, and none where the braille stands higher', () => {
    const { observations } = measured(signOf(PUMP_ROOM), 'braille.textGap')
    expect(observations).toMatchObject([
      { basis: 'declared', places: [{ element: 'braille/0' }, { element: 'lettering/0' }] },
    ])
    expect(observations[0]).not.toHaveProperty('remark')
    const on = signOf(PUMP_ROOM, { 'braille.0.origin': { x: 20, y: 70 + RADIUS } })
    expect(measured(on, 'braille.textGap').observations[0]?.value).toBeCloseTo(0, 9)
    expect(measured(signOf(PUMP_ROOM, { lettering: [] }), 'braille.textGap').nothing).toBe(
      'The sign has no raised characters.',
    )
  })

  test('braille that repeats nothing beside braille that repeats all has no gap of its own', () => {
    const braille = [{ ...BLOCK }, one('open', 120, 130)]
    expect(valuesOf(signOf(PUMP_ROOM, { braille }), 'braille.textGap')).toHaveLength(1)
  })

  test('cells without a dot have no edge', () => {
    const sign = drawnSign()
    const [block] = sign.braille
    const blank = { ...block, lines: [{ ...block.lines[0], cells: drawn('⠀'), dots: dotsAt('⠀', 20, 95) }] }
    for (const quantity of ['braille.textGap', 'braille.leftOffset', 'braille.bottomOffset'])
      expect(measured({ ...sign, braille: [blank] }, quantity).observations).toEqual([])
  })
})

describe('borders', () => {
  const EDGE = 'raised.borderClearance'
  const withBorders = (...borders: Border[]): Sign => drawnSign({ borders })

  test('the nearest edge counts, of each border', () => {
    const found = measured(
      withBorders(drawnBorder(5, 5, 400, 300, 4), drawnBorder(8, 8, 380, 280, 2)),
      EDGE,
    ).observations
    expect(found.map(({ value }) => value)).toEqual([11, 10])
    expect(found[0]).toMatchObject({ basis: 'drawn', places: [{ element: 'lettering/0' }, { element: 'border/0' }] })
  })

  test('a character that stands on a border has no distance, one within its ring has', () => {
    expect(valuesOf(withBorders(drawnBorder(18, 18, 400, 300, 10)), EDGE)).toEqual([0])
    expect(valuesOf(withBorders(drawnBorder(-100, -100, 900, 900, 1)), EDGE)[0]).toBeCloseTo(119, 9)
  })

  test('a border so thick that nothing is left within it is a plate', () => {
    const plate = { box: { x: 0, y: 200, width: 50, height: 8 }, width: 4, raised: true }
    const sign = signOf(PUMP_ROOM, { borders: [plate] })
    // from the lower row of the last line of braille to the plate
    expect(valuesOf(sign, 'braille.borderClearance')[0]).toBeCloseTo(200 - (95 + 10.1 + 4.8) - RADIUS, 9)
    const on = signOf(PUMP_ROOM, { borders: [{ ...plate, box: { x: 0, y: 90, width: 260, height: 8 } }] })
    expect(valuesOf(on, 'braille.borderClearance')[0]).toBe(0)
  })

  test('asks for what keeps a border from being told', () => {
    const plain = drawnBorder(5, 5, 400, 300, 4)
    const unwidth = { ...plain, outlines: [], width: missing() }
    expect(measured(withBorders(unwidth), EDGE).gaps).toMatchObject([
      { places: [{ element: 'border/0' }], ask: { pointer: '/sign/borders/0/width', unit: 'mm' } },
    ])
    const unsaid = { ...plain, raised: missing() }
    const { observations, gaps } = measured(withBorders(plain, unsaid), EDGE)
    expect(observations).toHaveLength(1)
    expect(gaps).toMatchObject([{ ask: { pointer: '/sign/borders/1/raised', choices: ['true', 'false'] } }])
    // drawn outlines tell without a width
    expect(measured(withBorders({ ...plain, width: missing() }), EDGE)).toMatchObject({ gaps: [], observations: [{}] })
  })

  test('that are flat, or none, are nothing to keep clear of', () => {
    const flat = { ...drawnBorder(5, 5, 400, 300, 4), raised: drawn(false) }
    for (const quantity of [EDGE, 'braille.borderClearance'])
      for (const sign of [withBorders(flat), withBorders()])
        expect(measured(sign, quantity).nothing).toBe('The sign has no raised border.')
    const bare = { ...withBorders(drawnBorder(5, 5, 400, 300, 4)), lettering: [] }
    expect(measured(bare, EDGE).nothing).toContain('no characters')
    expect(measured({ ...bare, braille: [] }, 'braille.borderClearance').nothing).toBe('The sign has no braille.')
  })

  test('described characters have a left end and a height, and what is open at the right is asked of a drawing', () => {
    const box = { x: 10, y: -50, width: 600, height: 400 }
    const { observations, gaps } = measured(signOf(PUMP_ROOM, { borders: [{ box, width: 2, raised: true }] }), EDGE)
    expect(observations).toMatchObject([{ value: 8, basis: 'declared', places: [{ element: 'lettering/0' }, {}] }])
    expect(gaps).toMatchObject([{ places: [{ element: 'lettering/0' }], ask: { pointer: '/drawing' } }])
  })
})
