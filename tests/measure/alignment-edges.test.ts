import { describe, expect, test } from 'vitest'
import { declared, isKnown, missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { dotsAt, drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, valuesOf } from './values.js'

/**
 * The edges of what counts as in line, by plain arithmetic on invented places: half a millimetre, and beside characters the blank that they
 * have in their typeface, a share of 0.15 of their height (our own figures: no code gives any). Sheets are 260 mm wide, characters 20 mm high.
 */
const IN_LINE = 0.5
const BLANK = 0.15 * 20

type Bar = [x: number, top: number, width: number, height?: number]

/** One set of characters of one bar each. */
function setOf(bars: Bar[], more: Partial<Lettering> = {}): Lettering {
  const [set] = drawnSign().lettering
  return {
    ...set,
    text: drawn('PUMP'),
    lines: bars.map(([x, top, width, height = 20]) => ({
      ...set.lines[0],
      text: drawn('PUMP'),
      baseline: drawn({ x, y: top + height }),
      outlines: [rectangle(x, top, width, height)],
    })),
    ...more,
  }
}
const signWith = (...lettering: Lettering[]): Sign => ({ ...drawnSign(), lettering })
const ofText = (sign: Sign) => valuesOf(sign, 'raised.alignment')
const whyNot = (sign: Sign, quantity = 'raised.alignment') => measured(sign, quantity).gaps.map(({ why }) => why)

describe('lines among each other', () => {
  const second = (x: number, width: number) => ofText(signWith(setOf([[20, 20, 100], [x, 50, width]]))) // prettier-ignore

  test('stand flush as far as the blank of a character reaches, and no farther', () => {
    expect(second(20 + BLANK, 40)).toEqual(['flush-left'])
    expect(second(20 + BLANK + 0.01, 40)).toEqual(['other'])
    expect(second(20 - BLANK, 40)).toEqual(['flush-left'])
    expect(second(80 + BLANK, 40)).toEqual(['flush-right'])
    expect(second(50 - BLANK, 40)).toEqual(['centred'])
    expect(second(50 - BLANK - 0.01, 40)).toEqual(['other'])
  })

  test('of small characters stand within half a millimetre', () => {
    const small = (x: number) =>
      ofText(signWith(setOf([[20, 20, 100], [x, 50, 40]], { characterHeight: drawn(2) }))) // prettier-ignore
    expect(small(20 + IN_LINE)).toEqual(['flush-left'])
    expect(small(20 + IN_LINE + 0.01)).toEqual(['other'])
    const unknown = setOf([[20, 20, 100], [20.51, 50, 40]], { characterHeight: missing() }) // prettier-ignore
    expect(ofText(signWith(unknown))).toEqual(['other'])
  })

  test('are judged by the tallest of several sets', () => {
    const sets = [setOf([[20, 20, 100]], { characterHeight: drawn(2) }), setOf([[23, 50, 40]])]
    expect(ofText(signWith(...sets))).toEqual(['flush-left'])
    expect(ofText(signWith(...[...sets].reverse()))).toEqual(['flush-left'])
  })

  test('are all held against the first', () => {
    const third = (x: number) => ofText(signWith(setOf([[20, 20, 100], [20, 50, 40], [x, 80, 30]]))) // prettier-ignore
    expect(third(20)).toEqual(['flush-left'])
    expect(third(60)).toEqual(['other'])
  })

  test('may begin where their baseline begins, or where their first outline does', () => {
    const set = setOf([[20, 20, 100], [30, 50, 40]]) // prettier-ignore
    const [first, other] = set.lines
    const begun = { ...other, baseline: drawn({ x: 20, y: 70 }) }
    expect(ofText(signWith({ ...set, lines: [first, begun] }))).toEqual(['flush-left'])
  })

  test('say where they are drawn, or that a client said so', () => {
    const sign = signWith(setOf([[20, 20, 100]]), setOf([[20, 50, 40]]))
    expect(measured(sign, 'raised.alignment').observations).toMatchObject([
      { basis: 'drawn', places: [{ element: 'lettering/0' }, { element: 'lettering/0' }] },
    ])
    const said = { alignment: declared('centred' as const) }
    const both = signWith(setOf([[20, 20, 100]], said), setOf([[20, 50, 40]], said))
    expect(measured(both, 'raised.alignment').observations).toMatchObject([{ value: 'centred', basis: 'declared' }])
    const differ = { alignment: declared('flush-right' as const) }
    expect(ofText(signWith(setOf([[20, 20, 100]], said), setOf([[20, 50, 40]], differ)))).toEqual(['flush-left'])
    expect(ofText(signWith(setOf([[20, 20, 100]], said), setOf([[20, 50, 40]])))).toEqual(['flush-left'])
    expect(ofText(signWith(setOf([[20, 20, 100]]), setOf([[20, 50, 40]], said)))).toEqual(['flush-left'])
  })
})

describe('lines beside each other', () => {
  /** A line from 20 to 120 with another beside it at 150, and one below that begins at 20. */
  const beside = (top: number, height = 20) =>
    ofText(signWith(setOf([[20, 20, 100]]), setOf([[150, top, 30, height]]), setOf([[20, 80, 40]])))

  test('are one where they share more than half the height of the lower of them', () => {
    expect(beside(20)).toEqual(['flush-left'])
    expect(beside(29.9)).toEqual(['flush-left'])
    expect(beside(30)).toEqual(['other'])
    expect(beside(10.1)).toEqual(['flush-left'])
    expect(beside(10)).toEqual(['other'])
    // half the height of the lower one, not of the higher
    expect(beside(36, 6)).toEqual(['flush-left'])
    expect(beside(37, 6)).toEqual(['other'])
  })

  test('begin where the leftmost begins and end where the rightmost ends', () => {
    const row = [setOf([[150, 20, 30]]), setOf([[20, 20, 100]])]
    expect(ofText(signWith(...row, setOf([[20, 80, 40]])))).toEqual(['flush-left'])
    expect(ofText(signWith(...row, setOf([[140, 80, 40]])))).toEqual(['flush-right'])
    expect(ofText(signWith(...row, setOf([[80, 80, 40]])))).toEqual(['centred'])
    expect(ofText(signWith(...row, setOf([[150, 80, 20]])))).toEqual(['other'])
  })

  test('stay one when a third stands beside one of them only', () => {
    const three = [setOf([[20, 20, 40]]), setOf([[70, 29, 40]]), setOf([[120, 38, 40]]), setOf([[120, 90, 40]])]
    expect(ofText(signWith(...three))).toEqual(['flush-right'])
  })
})

describe('an only line', () => {
  const at = (x: number, width: number) => ofText(signWith(setOf([[x, 20, width]])))

  test('is centred within half a millimetre of the middle of the panel', () => {
    expect(at(130 - 40 + IN_LINE, 80)).toEqual(['centred'])
    expect(at(130 - 40 - IN_LINE, 80)).toEqual(['centred'])
    expect(at(130 - 40 + IN_LINE + 0.01, 80)).toEqual(['flush-right'])
    expect(at(130 - 40 - IN_LINE - 0.01, 80)).toEqual(['flush-left'])
  })

  test('without its end, or on a panel that is not known, is not told', () => {
    const open = setOf([[20, 20, 100]])
    const described = { ...open, lines: open.lines.map((line) => ({ ...line, outlines: [] })) }
    expect(whyNot(signWith(described))).toEqual(['where the lines end on the right is not known'])
    const sign = signWith(open)
    expect(whyNot({ ...sign, panel: { ...sign.panel, place: { element: 'panel' } } })).toEqual([
      'the panel is not known',
    ])
  })
})

describe('lines that are not placed', () => {
  const set = setOf([[20, 20, 100], [20, 50, 40]]) // prettier-ignore
  const [first, other] = set.lines
  const nowhere = { ...other, outlines: [], baseline: missing() }

  test('leave it open how all stand', () => {
    expect(whyNot(signWith({ ...set, lines: [first, nowhere] }))).toEqual(['the place of the lines is not known'])
    expect(whyNot(signWith({ ...set, lines: [nowhere] }))).toEqual(['the place of the lines is not known'])
    expect(whyNot(signWith({ ...set, lines: [] }))).toEqual(['the place of the lines is not known'])
  })

  test('are asked for at the first set, with all that they can be', () => {
    expect(measured(signWith({ ...set, lines: [nowhere] }), 'raised.alignment').gaps[0]).toMatchObject({
      reason: 'missing-fact',
      ask: {
        pointer: '/sign/lettering/0/alignment',
        choices: ['flush-left', 'centred', 'flush-right', 'other'],
      },
    })
  })

  test('of a description are the first of a set only: of several nothing is told', () => {
    const bare = (line: typeof first) => ({ ...line, outlines: [] })
    expect(whyNot(signWith({ ...set, lines: [bare(first), bare(other)] }))).toEqual([
      'a description places the first line only',
    ])
    expect(ofText(signWith({ ...set, lines: [first, bare(other)] }))).toEqual(['flush-left'])
    expect(whyNot(signWith(setOf([[20, 80, 30]]), { ...set, lines: [bare(first), bare(other)] }))).toEqual([
      'a description places the first line only',
    ])
    expect(ofText(signWith({ ...set, lines: [bare(first)] }, { ...set, lines: [bare(other)] }))).toEqual(['flush-left'])
    const apart = { ...bare(other), baseline: drawn({ x: 60, y: 70 }) }
    expect(whyNot(signWith({ ...set, lines: [bare(first)] }, { ...set, lines: [apart] }))).toEqual([
      'where the lines end on the right is not known',
    ])
  })

  test('of which no height is known begin where their baseline does', () => {
    const low = (x: number): Lettering => ({
      ...set,
      characterHeight: missing(),
      lines: [{ ...first, outlines: [], baseline: drawn({ x, y: 40 }) }],
    })
    expect(ofText(signWith(low(20), low(20)))).toEqual(['flush-left'])
    expect(measured(signWith(low(20), low(20)), 'raised.alignment').observations[0]?.basis).toBe('declared')
  })
})

describe('braille under its text', () => {
  const CELLS = '⠏⠥⠍⠏'
  /** From the first column of the first cell to the last of the last: three cell spacings and a dot spacing. */
  const WIDTH = 3 * 6.9 + 2.4
  const RADIUS = 1.55 / 2

  function under(x: number, lettering: Lettering[] = [setOf([[20, 20, 100]])], cells = CELLS): Sign {
    const sign = signWith(...lettering)
    const [block] = sign.braille
    const line = { ...block.lines[0], cells: drawn(cells), dots: dotsAt(cells, x, 95), baseline: drawn({ x, y: 99.8 }) }
    return { ...sign, braille: [{ ...block, lines: [line] }] }
  }
  const found = (x: number, lettering?: Lettering[]) => measured(under(x, lettering), 'braille.alignment')
  const kind = (x: number, lettering?: Lettering[]) => found(x, lettering).observations.map(({ value }) => value)

  test('is in line within half a millimetre of a dot or of its edge', () => {
    expect(kind(20 - IN_LINE)).toEqual(['flush-left'])
    expect(kind(20 + RADIUS + IN_LINE - 1e-9)).toEqual(['flush-left'])
    expect(kind(20 + RADIUS + IN_LINE + 0.01)).toEqual([])
    expect(kind(120 - WIDTH - RADIUS - IN_LINE + 1e-9)).toEqual(['flush-right'])
    expect(kind(70 - WIDTH / 2 + IN_LINE - 1e-9)).toEqual(['centred'])
  })

  test('within the blank of a character is nearly in line, and beyond it is not', () => {
    expect(found(20 + RADIUS + BLANK - 0.01).gaps).toMatchObject([{ reason: 'needs-judgement' }])
    expect(found(20 + RADIUS + BLANK - 0.01).gaps[0]?.ask).toBeUndefined()
    expect(kind(20 + RADIUS + BLANK + 0.01)).toEqual(['other'])
  })

  test('whose last cell has dots in one column only ends at its second column all the same', () => {
    // ⠇ has dots 1, 2 and 3: nothing in its second column
    const ends = under(120 - WIDTH, [setOf([[20, 20, 100]], { text: drawn('PUMPL') })], '⠏⠥⠍⠇')
    const text = ends.lettering.map((set) => ({ ...set, text: missing() }))
    expect(valuesOf({ ...ends, lettering: text }, 'braille.alignment')).toEqual(['flush-right'])
  })

  test('is held against all lines of the text together', () => {
    const two = [setOf([[20, 20, 100], [60, 50, 100]])] // prettier-ignore
    expect(kind(20, two)).toEqual(['flush-left'])
    expect(kind(160 - WIDTH, two)).toEqual(['flush-right'])
    expect(kind(90 - WIDTH / 2, two)).toEqual(['centred'])
    expect(kind(60, two)).toEqual(['other'])
    const reversed = [setOf([[60, 20, 100], [20, 50, 100]])] // prettier-ignore
    expect(kind(20, reversed)).toEqual(['flush-left'])
  })

  test('tells its places and how it was seen', () => {
    expect(found(20).observations).toMatchObject([
      { basis: 'drawn', places: [{ element: 'braille/0' }, { element: 'lettering/0' }] },
    ])
    const bare = setOf([[20, 20, 100]])
    const described = { ...bare, lines: bare.lines.map((line) => ({ ...line, outlines: [] })) }
    expect(found(20, [described]).observations).toMatchObject([{ value: 'flush-left', basis: 'declared' }])
    const sign = under(20, [described])
    const source = { line: 1, column: 1 }
    const seen = { ...sign, braille: sign.braille.map((b) => ({ ...b, place: { ...b.place, source } })) }
    expect(measured(seen, 'braille.alignment').observations[0]?.basis).toBe('drawn')
  })

  test('is not told where the text is not placed or has no known end', () => {
    const bare = setOf([[20, 20, 100]])
    const ask = { pointer: '/sign/braille/0/alignment', choices: ['flush-left', 'centred', 'flush-right', 'other'] }
    const placeless = { ...bare, lines: bare.lines.map((line) => ({ ...line, outlines: [], baseline: missing() })) }
    expect(found(20, [placeless]).gaps).toMatchObject([
      { reason: 'missing-fact', why: 'the place of the text is not known', places: [{ element: 'braille/0' }], ask },
    ])
    const half = { ...bare, lines: [...bare.lines, ...placeless.lines] }
    expect(found(20, [half]).gaps).toMatchObject([{ why: 'the place of the text is not known' }])
    const endless = { ...bare, lines: bare.lines.map((line) => ({ ...line, outlines: [] })) }
    expect(found(60, [endless]).gaps).toMatchObject([{ why: 'where the lines end on the right is not known', ask }])
  })

  test('asks for what places the braille itself', () => {
    const sign = under(20)
    const unsized = { ...sign, braille: sign.braille.map((b) => ({ ...b, dotBaseDiameter: missing() })) }
    expect(measured(unsized, 'braille.alignment').gaps[0]?.ask?.pointer).toBe('/sign/braille/0/dotBaseDiameter')
  })

  test('is none without raised characters, and none where other braille repeats them', () => {
    expect(measured({ ...under(20), lettering: [] }, 'braille.alignment').nothing).toContain('no raised characters')
    const twice = signOf(PUMP_ROOM, {
      braille: [
        (PUMP_ROOM.braille as Record<string, unknown>[])[0],
        {
          ...(PUMP_ROOM.braille as Record<string, unknown>[])[0],
          lines: ['open'],
          lineSpacing: undefined,
          origin: { x: 60, y: 125 },
        },
      ],
    })
    const { observations, gaps } = measured(twice, 'braille.alignment')
    expect([observations.map(({ value }) => value), gaps]).toEqual([['flush-left'], []])
  })
})

test('the sheet of these tests is as wide as they say', () => {
  const { width } = drawnSign().panel
  expect(isKnown(width) && width.value).toBe(260)
})
