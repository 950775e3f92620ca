import { describe, expect, test } from 'vitest'
import { declared, isKnown, missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { setOf, signWith } from './bars.js'
import { drawn, drawnSign } from './drawn.js'
import { measured, valuesOf } from './values.js'

/**
 * The edges of what counts as in line, by plain arithmetic on invented places: half a millimetre, and beside characters the blank that they
 * have in their typeface, a share of 0.15 of their height (our own figures: no code gives any). Sheets are 260 mm wide, characters 20 mm high.
 */
const IN_LINE = 0.5
const BLANK = 0.15 * 20

const ofText = (sign: Sign) => valuesOf(sign, 'raised.alignment')
const whyNot = (sign: Sign, quantity = 'raised.alignment') => measured(sign, quantity).gaps.map(({ why }) => why)

describe('lines among each other', () => {
  const second = (x: number, width: number) =>
    ofText(
      signWith(
        setOf([
          [20, 20, 100],
          [x, 50, width],
        ]),
      ),
    )

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
      ofText(
        signWith(
          setOf(
            [
              [20, 20, 100],
              [x, 50, 40],
            ],
            { characterHeight: drawn(2) },
          ),
        ),
      )
    expect(small(20 + IN_LINE)).toEqual(['flush-left'])
    expect(small(20 + IN_LINE + 0.01)).toEqual(['other'])
    const unknown = setOf(
      [
        [20, 20, 100],
        [20.51, 50, 40],
      ],
      { characterHeight: missing() },
    )
    expect(ofText(signWith(unknown))).toEqual(['other'])
  })

  test('are judged by the tallest of several sets', () => {
    const sets = [setOf([[20, 20, 100]], { characterHeight: drawn(2) }), setOf([[23, 50, 40]])]
    expect(ofText(signWith(...sets))).toEqual(['flush-left'])
    expect(ofText(signWith(...[...sets].reverse()))).toEqual(['flush-left'])
  })

  test('are all held against the first', () => {
    const third = (x: number) =>
      ofText(
        signWith(
          setOf([
            [20, 20, 100],
            [20, 50, 40],
            [x, 80, 30],
          ]),
        ),
      )
    expect(third(20)).toEqual(['flush-left'])
    expect(third(60)).toEqual(['other'])
  })

  test('may begin where their baseline begins, or where their first outline does', () => {
    const set = setOf([
      [20, 20, 100],
      [30, 50, 40],
    ])
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
  const set = setOf([
    [20, 20, 100],
    [20, 50, 40],
  ])
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
    const drawnSet = setOf([[20, 50, 40]])
    for (const sign of [signWith(low(20), drawnSet), signWith(drawnSet, low(20))])
      expect(measured(sign, 'raised.alignment').observations).toMatchObject([{ value: 'flush-left', basis: 'drawn' }])
    expect(whyNot(signWith(low(60), drawnSet))).toEqual(['where the lines end on the right is not known'])
  })
})

test('the sheet of these tests is as wide as they say', () => {
  const { width } = drawnSign().panel
  expect(isKnown(width) && width.value).toBe(260)
})
