import { describe, expect, test } from 'vitest'
import { missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { setOf, signWith } from './bars.js'
import { dotsAt, drawn } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured, valuesOf } from './values.js'

/**
 * The edges of what counts as braille in line with its text, by plain arithmetic on invented places: half a millimetre from a dot or its edge;
 * within a share of 0.15 of the height of the characters (20 mm) a person judges (our own figures: no code gives any).
 */
const IN_LINE = 0.5
const BLANK = 0.15 * 20

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
    const two = [
      setOf([
        [20, 20, 100],
        [60, 50, 100],
      ]),
    ]
    expect(kind(20, two)).toEqual(['flush-left'])
    expect(kind(160 - WIDTH, two)).toEqual(['flush-right'])
    expect(kind(90 - WIDTH / 2, two)).toEqual(['centred'])
    expect(kind(60, two)).toEqual(['other'])
    const reversed = [
      setOf([
        [60, 20, 100],
        [20, 50, 100],
      ]),
    ]
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

  test('of several texts is held against its own', () => {
    const texts = [setOf([[20, 20, 60]]), setOf([[150, 20, 60]], { text: drawn('ROOM') })]
    const [first] = under(20).braille
    const [second] = under(150, texts, '⠗⠕⠕⠍').braille
    const sign = { ...signWith(...texts), braille: [first, second] }
    expect(valuesOf(sign, 'braille.alignment')).toEqual(['flush-left', 'flush-left'])
  })

  test('of several lines stands as its worst line does, a blank line as none', () => {
    const sign = under(20)
    const [block] = sign.braille
    const [line] = block.lines
    const withLine = (more: typeof line) =>
      valuesOf({ ...sign, braille: [{ ...block, lines: [line, more] }] }, 'braille.alignment')
    const [moved] = under(40).braille[0].lines
    expect(withLine(moved)).not.toContain('flush-left')
    expect(withLine({ ...line, cells: drawn('⠀'), dots: [] })).toEqual(['flush-left'])
  })

  test('ends at the edge of its last dot where the other column is not known', () => {
    const sign = under(120 - WIDTH - RADIUS - IN_LINE + 1e-9)
    const braille = sign.braille.map((block) => ({ ...block, dotSpacing: missing() }))
    expect(valuesOf({ ...sign, braille }, 'braille.alignment')).toEqual(['flush-right'])
  })

  test('is held against the line that begins furthest to the left, at either of its beginnings', () => {
    const set = setOf([
      [20, 20, 100],
      [30, 50, 100],
    ])
    const [first, other] = set.lines
    const begun = { ...set, lines: [{ ...first, baseline: drawn({ x: 60, y: 40 }) }, other] }
    expect(kind(60, [begun])).toEqual(['flush-left'])
    expect(kind(60, [{ ...begun, lines: [other, begun.lines[0]] }])).toEqual(['flush-left'])
  })

  test('under a line that ends somewhere unknown may end anywhere', () => {
    const set = setOf([
      [20, 20, 100],
      [20, 50, 100],
    ])
    const [first, other] = set.lines
    const half = { ...set, lines: [first, { ...other, outlines: [] }] }
    expect(found(60, [half]).gaps).toMatchObject([{ why: 'where the lines end on the right is not known' }])
    expect(found(20, [half]).observations).toMatchObject([{ value: 'flush-left', basis: 'drawn' }])
    expect(found(20, [setOf([])]).gaps).toMatchObject([{ why: 'the place of the text is not known' }])
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
