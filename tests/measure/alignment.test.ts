import { describe, expect, test } from 'vitest'
import type { Sign } from '../../src/sign/sign.js'
import { dotsAt, drawn, drawnSign, rectangle, turned } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, reasonsOf, valuesOf } from './values.js'

/** Lines of one bar each, from x to x + width; 20 mm high. All places are invented. */
function lines(...places: [x: number, width: number][]): Sign {
  const sign = drawnSign()
  const [set] = sign.lettering
  return {
    ...sign,
    lettering: [
      {
        ...set,
        lines: places.map(([x, width], i) => ({
          ...set.lines[0],
          baseline: drawn({ x, y: 40 + 30 * i }),
          outlines: [rectangle(x, 20 + 30 * i, width, 20)],
        })),
      },
    ],
  }
}

const ofText = (sign: Sign) => valuesOf(sign, 'raised.alignment')
const ofBraille = (sign: Sign) => valuesOf(sign, 'braille.alignment')

describe('lines among each other', () => {
  test.each<[string, [number, number][]]>([
    [
      'flush-left',
      [
        [20, 100],
        [20, 40],
      ],
    ],
    [
      'centred',
      [
        [20, 100],
        [50, 40],
      ],
    ],
    [
      'flush-right',
      [
        [20, 100],
        [80, 40],
      ],
    ],
    [
      'other',
      [
        [20, 100],
        [40, 40],
      ],
    ],
    [
      'other',
      [
        [20, 100],
        [20, 40],
        [40, 30],
      ],
    ],
  ])('stand %s', (kind, places) => expect(ofText(lines(...places))).toEqual([kind]))

  // The blank beside a character: up to 0.15 of 20 mm
  test('outlines of characters with blank beside them are in line', () => {
    expect(ofText(lines([20, 100], [22, 40]))).toEqual(['flush-left'])
    expect(ofText(lines([20, 100], [24, 40]))).toEqual(['other'])
  })

  test('beside each other are one line', () => {
    const sign = lines([20, 100], [20, 40])
    const [set] = sign.lettering
    const number = {
      ...set,
      lines: [{ ...set.lines[0], baseline: drawn({ x: 150, y: 40 }), outlines: [rectangle(150, 20, 30, 20)] }],
    }
    expect(ofText({ ...sign, lettering: [set, number] })).toEqual(['flush-left'])
    const below = { ...number, lines: [{ ...number.lines[0], outlines: [rectangle(150, 90, 30, 20)] }] }
    expect(ofText({ ...sign, lettering: [set, below] })).toEqual(['other'])
  })

  test('are read as the sign hangs', () => {
    const sign = turned(lines([20, 100], [20, 40]), { a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 }, 90)
    expect(ofText(sign)).toEqual(['flush-left'])
  })
})

describe('an only line on the panel of 260 mm', () => {
  test.each<[string, [number, number]]>([
    ['centred', [80, 100]],
    ['flush-left', [20, 100]],
    ['flush-right', [150, 100]],
  ])('stands %s', (kind, place) => expect(ofText(lines(place))).toEqual([kind]))

  test('is open on a panel that is not known', () => {
    const sign = lines([20, 100])
    expect(reasonsOf({ ...sign, panel: { ...sign.panel, place: { element: 'panel' } } }, 'raised.alignment')).toEqual([
      'missing-fact',
    ])
  })
})

describe('described lines', () => {
  test('stand as the description says, or it is asked', () => {
    expect(ofText(signOf(PUMP_ROOM, { 'lettering.0.alignment': 'centred' }))).toEqual(['centred'])
    expect(measured(signOf(PUMP_ROOM), 'raised.alignment').gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/lettering/0/alignment',
    ])
  })
})

describe('braille under its text', () => {
  /** The text runs from 20 to 120; the block of one line has its first dots at x. */
  function under(x: number, cells = '⠏⠥⠍⠏'): Sign {
    const sign = lines([20, 100])
    const [block] = sign.braille
    const known = drawn(cells)
    const line = { ...block.lines[0], cells: known, dots: dotsAt(cells, x, 95), baseline: drawn({ x, y: 99.8 }) }
    const [set] = sign.lettering
    const text = drawn('PUMP')
    const lettering = [{ ...set, text, lines: set.lines.map((one) => ({ ...one, text })) }]
    return { ...sign, lettering, braille: [{ ...block, lines: [line] }] }
  }
  // Four cells 6.9 mm apart, dots 2.4 mm apart: from the first column to the last are 3 × 6.9 + 2.4 = 23.1 mm
  const WIDTH = 23.1

  test.each([
    ['flush-left', 20],
    ['flush-left', 20 + 1.55 / 2],
    ['centred', 70 - WIDTH / 2],
    ['flush-right', 120 - WIDTH],
    ['other', 40],
  ])('stands %s with its first dots at %d', (kind, x) => expect(ofBraille(under(x))).toEqual([kind]))

  test('nearly in line, by less than the blank beside a character, is for a person', () => {
    expect(reasonsOf(under(22), 'braille.alignment')).toEqual(['needs-judgement'])
  })

  test('a first cell without dots in its first column begins there all the same', () => {
    // ⠠ has dot 6 alone, in the second column
    expect(ofBraille(under(20, '⠠⠏⠥⠍⠏'))).toEqual(['flush-left'])
  })

  test('of a description may be seen to stand flush left, and no more', () => {
    expect(ofBraille(signOf(PUMP_ROOM))).toEqual(['flush-left'])
    const moved = signOf(PUMP_ROOM, { 'braille.0.origin': { x: 60, y: 95 } })
    expect(measured(moved, 'braille.alignment').gaps.map(({ ask }) => ask?.pointer)).toEqual([
      '/sign/braille/0/alignment',
    ])
    expect(ofBraille(signOf(PUMP_ROOM, { 'braille.0.alignment': 'centred' }))).toEqual(['centred'])
  })
})

describe('level with the panel', () => {
  const level = (sign: Sign) => valuesOf(sign, 'raised.horizontal')
  /** The characters and the braille of a drawing, each at its own direction. */
  function lying(letters: number, dots: number): Sign {
    const sign = drawnSign()
    const source = { line: 1, column: 1 }
    return {
      ...sign,
      lettering: sign.lettering.map((l) => ({ ...l, lie: { rotation: letters, mirrored: false } })),
      braille: sign.braille.map((b) => ({ ...b, place: { ...b.place, source }, rotation: dots })),
    }
  }

  test('are lines that run as the panel’s edges do', () => {
    expect(level(lying(0, 0))).toEqual([true, true])
    expect(level(lying(90, 90.5))).toEqual([true, true])
  })

  test('is not braille that runs otherwise than the characters', () => {
    expect(level(lying(0, 5))).toEqual([true, false])
    expect(level(lying(0, 90))).toEqual([true, false])
  })

  test('a sign drawn at an angle may have a panel at the same angle: open', () => {
    expect(reasonsOf(lying(15, 15), 'raised.horizontal')).toEqual(['unreadable', 'unreadable'])
  })

  test('characters that were not read may run any way', () => {
    const sign = lying(0, 0)
    const lettering = sign.lettering.map((l) => ({ ...l, lie: undefined }))
    expect(reasonsOf({ ...sign, lettering }, 'raised.horizontal')).toEqual(['unreadable'])
  })

  test('a description has level lines only', () => {
    expect(measured(signOf(PUMP_ROOM), 'raised.horizontal').observations).toMatchObject([
      { value: true, basis: 'declared' },
      { value: true, basis: 'declared' },
    ])
  })
})
