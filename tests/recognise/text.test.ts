import { describe, expect, it } from 'vitest'
import { boxOfPoints } from '../../src/geometry/box.js'
import { rotation } from './turned.js'
import { layOut } from '../../src/recognise/layout.js'
import { groupRuns, letteringOfText } from '../../src/recognise/text.js'
import { isKnown, type Fact, type Lettering } from '../../src/sign/sign.js'
import type { DrawnText } from '../../src/drawing/drawing.js'
import { text } from './built.js'

const letteringsOf = (texts: DrawnText[]): Lettering[] =>
  groupRuns(layOut(texts).map((run) => ({ run, part: 'both' as const }))).map((group, i) =>
    letteringOfText(group, `lettering/${i}`),
  )

const known = <T>(fact: Fact<T> | undefined): T => {
  if (!isKnown(fact)) throw new Error(`not known: ${JSON.stringify(fact)}`)
  return fact.value
}

/** `hand-x-lower-live` of the test drawings: DejaVu Sans 26.063, an x for each character; its truth: 19 mm, gaps of 3.6 mm. */
const WAITING = [
  43.4057, 64.5596, 79.3076, 87.0054, 97.7447, 103.7754, 120.2411, 138.4852, 143.876, 155.8905, 172.5728, 188.3257,
]
const waiting = text('waiting room', 0, 0, {
  fontSize: 26.063,
  positions: WAITING.map((x, i) => (i === 0 ? { x, y: 43 } : { x })),
})

/** `hand-text-tspans`: a tspan for each letter and none for the space; its truth: THEATER B, 19 mm, gaps of 3.6 mm. */
const THEATER: [string, number][] = [
  ['T', 43.0463],
  ['H', 60.085],
  ['E', 78.1673],
  ['A', 96.3641],
  ['T', 111.4886],
  ['E', 128.5273],
  ['R', 144.3698],
  ['B', 170.9952],
]
const theater = THEATER.map(([letter, x]) => text(letter, 8, 43, { fontSize: 26.063, positions: [{ x, y: 0 }] }))

describe('live text of a shipped typeface', () => {
  it('has the sizes that the drawing was made with', () => {
    const [lettering] = letteringsOf([waiting])
    expect(known(lettering.text)).toBe('waiting room')
    expect(known(lettering.characterHeight)).toBeCloseTo(19, 3)
    expect(known(lettering.strokeThickness)).toBeCloseTo(2.5707, 3)
    const spacing = lettering.characterSpacing
    expect(known(spacing)).toBeCloseTo(3.6, 3)
    expect(isKnown(spacing) && [spacing.min, spacing.max, spacing.count]).toEqual([
      expect.closeTo(3.6, 2),
      expect.closeTo(3.6, 2),
      9,
    ])
    expect(known(lettering.lines[0].baseline)).toEqual({ x: 43.4057, y: 43 })
    expect(lettering.baselineSpacing).toBeUndefined()
    expect(known(lettering.style)).toBe('sans-serif')
  })

  it('is joined from letters that are put in place one by one, with the space that nobody wrote', () => {
    const letterings = letteringsOf(theater)
    expect(letterings).toHaveLength(1)
    expect(known(letterings[0].text)).toBe('THEATER B')
    expect(known(letterings[0].characterHeight)).toBeCloseTo(19, 3)
    const spacing = letterings[0].characterSpacing
    expect(known(spacing)).toBeCloseTo(3.6, 3)
    expect(isKnown(spacing) && spacing.count).toBe(6)
  })

  // Invented: wide tracking must not be read as spaces, nor must one wide gap among tracked letters be lost.
  it('keeps tracked letters in one word', () => {
    expect(known(letteringsOf([text('ROOM', 10, 40, { letterSpacing: 10 })])[0].text)).toBe('ROOM')
    expect(known(letteringsOf([text('ROOM 12', 10, 40, { letterSpacing: 10 })])[0].text)).toBe('ROOM 12')
  })

  // Oracle: the advances and the kerning pair A-V in the face itself, by the file's own hmtx and GPOS tables (units of 2048).
  it('moves the pen by advance, kerning and letter-spacing', () => {
    const [run] = layOut([text('AVA', 0, 0, { fontSize: 2048, letterSpacing: 7 })])
    expect(run.characters.map((c) => Math.round(c.origin.x))).toEqual([0, 1270 + 7, 2540 + 14])
  })

  it('is moved back by text-anchor, over all runs of a chunk', () => {
    const start = letteringsOf([text('ROOM 12', 100, 40)])[0].place.box
    const middle = letteringsOf([
      text('ROOM ', 100, 40, { textAnchor: 'middle' }),
      text('12', 100, 40, { textAnchor: 'middle' }),
    ])[0]
    const width = layOut([text('ROOM 12', 0, 0)])[0].characters.reduce(
      (sum, c) => Math.max(sum, c.origin.x + c.advance),
      0,
    )
    expect(known(middle.text)).toBe('ROOM 12')
    expect((start?.x ?? NaN) - (middle.place.box?.x ?? NaN)).toBeCloseTo(width / 2, 6)
    const end = letteringsOf([text('ROOM 12', 100, 40, { textAnchor: 'end' })])[0].place.box
    expect((start?.x ?? NaN) - (end?.x ?? NaN)).toBeCloseTo(width, 6)
  })

  it('is read and measured when the sign is turned and scaled', () => {
    const matrix = rotation(90, 2, 60, 10)
    const [lettering] = letteringsOf([text('EXIT 2', 0, 0, { matrix, fontSize: 13 })])
    const [upright] = letteringsOf([text('EXIT 2', 60, 10, { fontSize: 26 })])
    expect(known(lettering.text)).toBe('EXIT 2')
    for (const key of ['characterHeight', 'strokeThickness', 'characterProportion', 'characterSpacing'] as const)
      expect(known(lettering[key])).toBeCloseTo(known(upright[key]), 6)
    const [box, straight] = [lettering, upright].map((l) =>
      boxOfPoints(l.lines.flatMap((line) => line.outlines.flat())),
    )
    expect([box?.width, box?.height]).toEqual([
      expect.closeTo(straight?.height ?? NaN, 6),
      expect.closeTo(straight?.width ?? NaN, 6),
    ])
  })

  it('is squeezed by an unequal scale: width and stroke with the one axis, height with the other', () => {
    const [plain] = letteringsOf([text('IO', 0, 0)])
    const [wide] = letteringsOf([text('IO', 0, 0, { matrix: { a: 2, b: 0, c: 0, d: 1, e: 0, f: 0 } })])
    expect(known(wide.characterHeight)).toBeCloseTo(known(plain.characterHeight), 9)
    expect(known(wide.characterProportion)).toBeCloseTo(2 * known(plain.characterProportion), 9)
    expect(known(wide.strokeThickness)).toBeCloseTo(2 * known(plain.strokeThickness), 9)
  })

  it('has lines from the top down, their spacing, and sets by size', () => {
    const [lettering, small, ...rest] = letteringsOf([
      text('204', 20, 75),
      text('READING', 20, 40),
      text('quiet please', 20, 90, { fontSize: 8 }),
    ])
    expect(rest).toEqual([])
    expect(lettering.lines.map((l) => known(l.text))).toEqual(['READING', '204'])
    expect(known(lettering.text)).toBe('READING 204')
    expect(known(lettering.baselineSpacing)).toBeCloseTo(35, 9)
    expect(lettering.lines.map((l) => l.place.element)).toEqual(['lettering/0/line/0', 'lettering/0/line/1'])
    expect(known(small.text)).toBe('quiet please')
  })

  it('is serif, italic or leaning where it is', () => {
    expect(known(letteringsOf([text('A', 0, 0, { fontFamilies: ['DejaVu Serif'] })])[0].style)).toBe('serif')
    expect(known(letteringsOf([text('A', 0, 0, { fontStyle: 'italic', fontFamilies: ['Open Sans'] })])[0].style)).toBe(
      'italic',
    )
    const leaning = text('A', 0, 0, { matrix: { a: 1, b: 0, c: -0.3, d: 1, e: 0, f: 0 } })
    expect(letteringsOf([leaning])[0].style).toMatchObject({ unknown: 'needs-judgement' })
  })
})

describe('live text of a typeface that is not known', () => {
  const unknown = { fontFamilies: ['Corner Shop Gothic'] }
  it('says what it says and nothing of its sizes', () => {
    const [lettering] = letteringsOf([text('ROOM 12', 20, 40, unknown)])
    expect(known(lettering.text)).toBe('ROOM 12')
    expect(known(lettering.lines[0].baseline)).toEqual({ x: 20, y: 40 })
    for (const key of [
      'characterHeight',
      'characterProportion',
      'strokeThickness',
      'characterSpacing',
      'style',
    ] as const)
      expect(lettering[key]).toMatchObject({ unknown: 'unreadable' })
  })
  it('does not say where words end when its letters are put in place one by one', () => {
    const [lettering] = letteringsOf(theater.map((t) => ({ ...t, ...unknown })))
    expect(lettering.text).toMatchObject({ unknown: 'unreadable' })
  })
  it('has the height of its capitals where the open metrics have it', () => {
    const [lettering] = letteringsOf([text('ROOM', 20, 40, { fontFamilies: ['Georgia'], fontSize: 20 })])
    // Georgia: capitals of 1419 in 2048 units (@capsizecss/metrics).
    expect(known(lettering.characterHeight)).toBeCloseTo((20 * 1419) / 2048, 9)
    expect(lettering.strokeThickness).toMatchObject({ unknown: 'unreadable' })
    expect(known(lettering.style)).toBe('serif')
  })
  it.each<[string, Partial<DrawnText>]>([
    ['a layout that is not carried out', { unsupported: ['writing-mode'] }],
    ['no size', { fontSize: 0 }],
    ['a matrix that flattens it', { matrix: { a: 1, b: 1, c: 1, d: 1, e: 0, f: 0 } }],
  ])('nor has it sizes with %s', (_, more) => {
    const [lettering] = letteringsOf([text('ROOM', 20, 40, more)])
    expect(known(lettering.text)).toBe('ROOM')
    expect(lettering.characterSpacing).toMatchObject({ unknown: 'unreadable' })
    expect(lettering.lines[0].outlines).toEqual([])
  })
  it('nor where the face lacks a character', () => {
    const [lettering] = letteringsOf([text('ROOM 部', 20, 40)])
    expect(lettering.characterSpacing).toMatchObject({ unknown: 'unreadable' })
  })
})

describe('live text of a face that has the advances of a shipped one', () => {
  const arial = { fontFamilies: ['Arial'], fontSize: 20 }
  it('says what it says and how high its capitals are, and nothing that its outlines would have to tell', () => {
    const [lettering] = letteringsOf([text('ROOM 12', 20, 40, arial)])
    expect(known(lettering.text)).toBe('ROOM 12')
    expect(lettering.family).toBe('Arial')
    // Arial: capitals of 1467 in 2048 units (@capsizecss/metrics); those of Arimo are lower.
    expect(known(lettering.characterHeight)).toBeCloseTo((20 * 1467) / 2048, 9)
    for (const key of ['strokeThickness', 'characterProportion', 'characterSpacing'] as const)
      expect(lettering[key]).toMatchObject({ unknown: 'unreadable', why: expect.stringContaining('Arimo') as string })
    expect(lettering.lines[0].outlines).toEqual([])
    expect(known(lettering.lines[0].baseline)).toEqual({ x: 20, y: 40 })
  })
  // Advances of R and O in Arial's own hmtx table, from its published widths (Adobe's Helvetica AFM has the same): 722 and 778 of 1000.
  it('stands where its own advances put it, so that words are told from letters set one by one', () => {
    const [run] = layOut([text('ROO', 0, 0, { ...arial, fontSize: 1000 })])
    expect(run.characters.map((c) => Math.round(c.origin.x))).toEqual([0, 722, 722 + 778])
    const apart = ['R', 'O', 'OM', 'B'].map((letters, i) =>
      text(letters, 0, 40, { ...arial, positions: [{ x: [0, 14.44, 30, 90][i], y: 0 }] }),
    )
    expect(known(letteringsOf(apart)[0].text)).toBe('ROOM B')
  })
  it('anchors at the middle and the end like its own', () => {
    const [run] = layOut([text('ROO', 100, 0, { ...arial, fontSize: 100, textAnchor: 'end' })])
    expect(run.characters[0].origin.x).toBeCloseTo(100 - (72.2 + 2 * 77.8), 1)
  })
})

describe('characters that are turned one by one', () => {
  it('keep the sizes of their typeface; what they look like is a matter of judgement', () => {
    const [lettering] = letteringsOf([text('ROOM', 20, 40, { positions: [{ rotate: 15 }, { rotate: 15 }] })])
    expect(known(lettering.text)).toBe('ROOM')
    expect(known(lettering.characterHeight)).toBeCloseTo((26 * 1493) / 2048, 2)
    expect(lettering.style).toMatchObject({ unknown: 'needs-judgement' })
  })
})

describe('text that is stretched into a length', () => {
  it('is not measured while its characters are put in place as well', () => {
    const fitted = { length: 80, adjust: 'spacing' as const }
    const [lettering] = letteringsOf([text('ROOM 2', 20, 40, { fitted, positions: [undefined, { y: 3 }] })])
    expect(lettering.characterSpacing).toMatchObject({ unknown: 'unreadable' })
  })
  it('is wider, and so are its strokes', () => {
    const [plain] = letteringsOf([text('ROOM', 20, 40)])
    const advance = layOut([text('ROOM', 0, 0)])[0].characters.reduce((sum, c) => sum + c.advance, 0)
    const fitted = { length: 2 * advance, adjust: 'spacingAndGlyphs' as const }
    const [wide] = letteringsOf([text('ROOM', 20, 40, { fitted })])
    expect(known(wide.strokeThickness)).toBeCloseTo(2 * known(plain.strokeThickness), 6)
    expect(known(wide.characterHeight)).toBeCloseTo(known(plain.characterHeight), 9)
  })
})
