import { describe, expect, test } from 'vitest'
import { readAs, wrongCells } from '../../src/measure/wrong-cells.js'
import { missing, type BrailleBlock, type Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** Variation, grade and wrong cells of braille. Words and sizes are invented; shares are worked by hand. */

type Json = Record<string, unknown>
const BLOCK = (PUMP_ROOM.braille as Json[])[0]
const UNREADABLE = { unknown: 'unreadable' as const, why: 'no cells' }
const [block] = signOf(PUMP_ROOM).braille

describe('how much a size varies', () => {
  const sized = (size: Partial<BrailleBlock>, more: Partial<BrailleBlock> = {}): Sign => {
    const sign = drawnSign()
    return { ...sign, braille: [{ ...sign.braille[0], ...size, ...more }] }
  }
  const of = (sign: Sign, name: string) => {
    const { observations, gaps } = measured(sign, 'braille.variation')
    return {
      observation: observations.find(({ remark }) => remark?.includes(name)),
      gap: gaps.find(({ why }) => why.includes(name)),
    }
  }
  const HEIGHT = 'dot height'

  // Greatest deviation from the mean over the mean
  test('is the greater of the ways from the mean to its extremes', () => {
    const low = { ...drawn(0.7), min: 0.5, max: 0.75, count: 4 }
    expect(of(sized({ dotHeight: low }), HEIGHT).observation?.value).toBeCloseTo(0.2 / 0.7, 12)
    const high = { ...drawn(0.7), min: 0.65, max: 0.8, count: 4 }
    const { observation, gap } = of(sized({ dotHeight: high }), HEIGHT)
    expect(observation?.value).toBeCloseTo(0.1 / 0.7, 12)
    expect(observation).toMatchObject({ count: 4, basis: 'drawn', places: [{ element: 'braille/0' }] })
    expect(gap).toBeUndefined()
  })

  test('of several blocks is that of all their dots, by their number', () => {
    const sign = sized({ dotHeight: { ...drawn(0.6), min: 0.6, max: 0.6, count: 3 } })
    const [first] = sign.braille
    const second = { ...first, dotHeight: { ...drawn(0.8), min: 0.8, max: 0.8, count: 1 } }
    const { observation } = of({ ...sign, braille: [first, second] }, HEIGHT)
    const mean = (3 * 0.6 + 0.8) / 4
    expect(observation?.value).toBeCloseTo((0.8 - mean) / mean, 12)
    expect(observation).toMatchObject({ count: 4, places: [{}, {}] })
  })

  test('is not told by a single figure, which is asked for at several places', () => {
    const { observation, gap } = of(signOf(PUMP_ROOM), HEIGHT)
    expect(observation).toBeUndefined()
    expect(gap).toMatchObject({
      reason: 'missing-fact',
      places: [{ element: 'braille/0' }],
      ask: { pointer: '/sign/measured', unit: 'mm', ask: expect.stringContaining('braille.dotHeight') as string },
    })
    expect(of(sized({ dotHeight: drawn(0.7) }), HEIGHT)).toEqual({ observation: undefined, gap: undefined })
    expect(of(sized({ dotHeight: missing() }), HEIGHT).gap).toBeDefined()
  })

  test('is told by a gauge that was put on it more than once', () => {
    const read = (...values: number[]) =>
      of(signOf(PUMP_ROOM, { measured: [{ quantity: 'braille.dotHeight', values }] }), HEIGHT)
    expect(read(0.6, 0.8).observation).toMatchObject({ count: 2, basis: 'measured' })
    expect(read(0.6, 0.8).observation?.value).toBeCloseTo(0.1 / 0.7, 12)
    expect(read(0.6, 0.8).gap).toBeUndefined()
    expect(read(0.6)).toMatchObject({ observation: undefined, gap: {} })
  })

  test('of one block that is not known stays open beside the other', () => {
    const sign = sized({ dotHeight: { ...drawn(0.7), min: 0.65, max: 0.75, count: 4 } })
    const [first] = sign.braille
    const { observation, gap } = of({ ...sign, braille: [first, { ...first, dotHeight: missing() }] }, HEIGHT)
    expect(observation).toBeDefined()
    expect(gap?.places).toHaveLength(2)
  })

  test('of lines and cells is asked only where there are several', () => {
    const [line] = block.lines
    const single = (cells: string | undefined) =>
      sized(
        { cellSpacing: missing() },
        { lines: [{ ...line, cells: cells === undefined ? UNREADABLE : drawn(cells) }] },
      )
    expect(of(single('⠏'), 'cell').gap).toBeUndefined()
    expect(of(single('⠏⠥'), 'cell').gap).toBeDefined()
    expect(of(single(undefined), 'cell').gap).toBeDefined()
    expect(of(single('⠏⠥'), 'line').gap).toBeUndefined()
    expect(of(sized({ lineSpacing: missing() }), 'line').gap).toBeDefined()
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), 'braille.variation').nothing).toBe('The sign has no braille.')
  })
})

describe('the grade of a block', () => {
  const grade = (text: string, more: Json = {}) =>
    measured(
      signOf(PUMP_ROOM, { 'braille.0.lines': [text], 'braille.0.lineSpacing': undefined, ...more }),
      'braille.contracted',
    )

  test('has its place, its cells and the grades that they say the text in', () => {
    const [one] = measured(signOf(PUMP_ROOM), 'braille.contracted').observations
    expect(one).toMatchObject({
      value: true,
      basis: 'declared',
      places: [{ element: 'braille/0' }],
      context: { expected: '⠏⠥⠍⠏⠀⠗⠕⠕⠍⠀⠼⠁⠃', grades: expect.stringContaining('ueb-contracted') as string },
    })
    expect(one).not.toHaveProperty('remark')
  })

  test('is told of the cells alone where they do not say the text', () => {
    const [one] = grade('station').observations
    expect(one?.value).toBe(true)
    expect(one?.context).not.toHaveProperty('expected')
  })

  test('is not told of cells that are not known', () => {
    expect(grade('x', { 'braille.0.lines': undefined }).gaps).toMatchObject([
      { ask: { pointer: '/sign/braille/0/text' } },
    ])
  })

  test('of another country is for one who reads it', () => {
    const sign = signOf(PUMP_ROOM, { braille: [BLOCK, { ...BLOCK, origin: { x: 20, y: 125 } }] })
    expect(measured(sign, 'braille.nationalCode').gaps).toMatchObject([
      { reason: 'needs-judgement', places: [{ element: 'braille/0' }, { element: 'braille/1' }] },
    ])
  })
})

describe('cells that are wrong', () => {
  const lineOf = (cells: string, n = 0) => ({ ...block.lines[n], cells: drawn(cells) })
  const one: BrailleBlock = { ...block, lines: [lineOf('⠏⠥⠍⠏')] }
  const two: BrailleBlock = { ...block, lines: [lineOf('⠏⠥⠍⠏'), lineOf('⠗⠕⠕⠍', 1)] }

  test('are none where they are as expected, in either grade', () => {
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠏⠥⠍⠏'])).toBeUndefined()
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠕⠕⠍', '⠏⠥⠍⠏'])).toBeUndefined()
    expect(wrongCells([one], '⠏⠥⠍⠏', [])).toBeUndefined()
  })

  // The second cell has its dot 1 at the baseline's left end and one cell spacing (6.9 mm) on; two dot spacings (2.4 mm) up, half a dot round it
  test('are named by their number, and shown by their box', () => {
    const found = wrongCells([one], '⠏⠥⠍⠏', ['⠏⠕⠍⠏'])
    expect(found?.text).toContain('cell 2')
    const [place] = found?.places ?? []
    expect(place).toMatchObject({ element: 'braille/0/line/0/cell/1' })
    expect(place?.box?.x).toBeCloseTo(20 + 6.9 - 1.55 / 2, 9)
    expect(place?.box?.y).toBeCloseTo(95 - 1.55 / 2, 9)
    expect(place?.box?.width).toBeCloseTo(2.4 + 1.55, 9)
    expect(place?.box?.height).toBeCloseTo(4.8 + 1.55, 9)
  })

  test('in several lines are named by line and cell, in several blocks by their block', () => {
    expect(wrongCells([two], '⠏⠥⠍⠏⠀⠗⠕⠕⠍', ['⠏⠥⠍⠏⠀⠗⠕⠥⠍'])?.text).toContain('line 2, cell 3')
    const pair = [one, { ...one, lines: [lineOf('⠗⠕⠕⠍')] }]
    expect(wrongCells(pair, '⠏⠥⠍⠏⠀⠗⠕⠕⠍', ['⠏⠥⠍⠏⠀⠗⠕⠥⠍'])?.text).toContain('cell 3 of its block')
  })

  test('are held against the grade that they are nearest to, and no more than three are named', () => {
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠗', '⠏⠕⠍⠏'])?.places).toHaveLength(1)
    const all = wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠗'])
    expect(all?.places).toHaveLength(3)
    expect(all?.text).toContain('and 1 more')
    expect(wrongCells([one], '⠏⠥⠍⠏', ['⠗⠗⠗⠏'])?.text).not.toContain('more')
  })

  test('that are missing at the end have no place', () => {
    const found = wrongCells([one], '⠏⠥⠍⠏', ['⠏⠥⠍⠏⠎'])
    expect(found?.text).toContain('the end')
    expect(found?.places).toEqual([])
  })

  test('are shown without a box where their line is turned, mirrored or not placed', () => {
    const placeOf = (change: Partial<BrailleBlock>, wanted = '⠏⠕⠍⠏') =>
      wrongCells([{ ...one, ...change }], '⠏⠥⠍⠏', [wanted])?.places[0]
    for (const change of [{ rotation: 90 }, { mirrored: true }, { dotSpacing: missing() }, { cellSpacing: missing() }])
      expect(placeOf(change)).not.toHaveProperty('box')
    expect(placeOf({ lines: [{ ...lineOf('⠏⠥⠍⠏'), baseline: missing() }] })).not.toHaveProperty('box')
    expect(placeOf({ cellSpacing: missing() }, '⠗⠥⠍⠏')?.box?.x).toBeCloseTo(20 - 1.55 / 2, 9)
    expect(placeOf({ dotBaseDiameter: missing() })?.box?.width).toBeCloseTo(2.4, 9)
  })

  test('read as something only where every line does', () => {
    const read = (...texts: (string | undefined)[]) =>
      readAs([{ ...two, lines: texts.map((text, i) => ({ ...two.lines[i], text })) }])
    expect(read('pump', 'room')).toBe(' and read “pump room”')
    expect(read('pump', undefined)).toBe('')
    expect(readAs([])).toBe('')
  })
})
