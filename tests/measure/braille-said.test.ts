import { describe, expect, test } from 'vitest'
import { basisOfBlock, unreadCells, unreadText } from '../../src/measure/braille-reading.js'
import { missing, type BrailleBlock, type Lettering, type Sign, type Unknown } from '../../src/sign/sign.js'
import { drawn, drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf, translator } from './signs.js'
import { measured, RAISED } from './values.js'

/**
 * What a finding on the words of the braille holds (2010 ADA Standards 703.2, 703.3, 703.3.1). The words are invented; what they are in
 * braille is checked elsewhere, against the tables of the reference library.
 */

const WORDS = 'braille.wording'
const SOURCE = { line: 3, column: 5 }
const UNREADABLE: Unknown = { unknown: 'unreadable', why: 'a cell has a dot too many' }

const asDrawn = (sign: Sign, braille: Partial<BrailleBlock> = {}, lettering: Partial<Lettering> = {}): Sign => ({
  ...sign,
  braille: sign.braille.map((block) => ({ ...block, place: { ...block.place, source: SOURCE }, ...braille })),
  lettering: sign.lettering.map((set) => ({ ...set, lie: { rotation: 0, mirrored: false }, ...lettering })),
})
const UPRIGHT = asDrawn(signOf(PUMP_ROOM))
const wrong = (sign: Sign): Sign => ({
  ...sign,
  braille: sign.braille.map((b) => ({ ...b, lines: b.lines.slice(0, 1) })),
})

describe('the words', () => {
  test('have their places, cells, print and what was expected', () => {
    const [one] = measured(signOf(PUMP_ROOM), WORDS).observations
    expect(one).toMatchObject({
      value: true,
      basis: 'declared',
      places: [{ element: 'braille/0' }, { element: 'lettering/0' }],
      context: { print: 'PUMP ROOM 12', expected: '⠏⠥⠍⠏⠀⠗⠕⠕⠍⠀⠼⠁⠃' },
    })
    expect(one?.context).not.toHaveProperty('lying')
    expect(one?.remark).toBe(
      'The cells are ⠏⠥⠍⠏⠀⠗⠕⠕⠍⠀⠼⠁⠃; the raised text “PUMP ROOM 12” is ⠏⠥⠍⠏⠀⠗⠕⠕⠍⠀⠼⠁⠃ in contracted braille.',
    )
  })

  test('are drawn where the cells or the characters are', () => {
    const cells = asDrawn(signOf(PUMP_ROOM), {
      lines: signOf(PUMP_ROOM).braille[0].lines.map((line) => ({
        ...line,
        cells: 'value' in line.cells ? drawn(line.cells.value) : line.cells,
      })),
    })
    expect(measured(cells, WORDS).observations[0]?.basis).toBe('drawn')
    expect(basisOfBlock(cells.braille[0])).toBe('drawn')
    const text = asDrawn(signOf(PUMP_ROOM), {}, { text: drawn('PUMP ROOM 12') })
    expect(measured(text, WORDS).observations[0]?.basis).toBe('drawn')
    expect(measured(signOf(PUMP_ROOM), WORDS).observations[0]?.basis).toBe('declared')
  })

  test('that are wrong are shown where they are wrong', () => {
    const [one] = measured(wrong(signOf(PUMP_ROOM)), WORDS).observations
    expect(one?.value).toBe(false)
    expect(one?.remark).toContain('The cells are ⠏⠥⠍⠏⠀⠗⠕⠕⠍')
    expect(one?.places.length).toBeGreaterThanOrEqual(2)
    const [other] = measured(signOf(PUMP_ROOM, { 'braille.0.lines': ['pump roam', '12'] }), WORDS).observations
    expect(other?.remark).toContain('Compared cell by cell: ')
    expect(other?.places[0]?.element).toMatch(/^braille\/0\/line\/0\/cell\/\d$/u)
  })
})

describe('braille that lies otherwise than the letters', () => {
  test('is wrong where it is mirrored or upside down, though its cells are right', () => {
    for (const [change, lying] of [
      [{ mirrored: true }, 'mirrored'],
      [{ rotation: 180 }, 'upside-down'],
    ] as const) {
      const [one] = measured(asDrawn(UPRIGHT, change), WORDS).observations
      expect(one).toMatchObject({ value: false, context: { lying } })
      expect(one?.remark).toContain('The cells are')
    }
    expect(measured(UPRIGHT, WORDS).observations[0]).toMatchObject({ value: true })
  })

  test('is for a person where it runs in another direction, or nothing tells how the letters lie', () => {
    const askew = asDrawn(UPRIGHT, { rotation: 90 })
    const unknown = asDrawn(UPRIGHT, { mirrored: true }, { lie: undefined })
    for (const [sign, why] of [
      [askew, 'another direction'],
      [unknown, 'drawn mirrored'],
    ] as const)
      expect(measured(sign, WORDS)).toMatchObject({
        observations: [],
        gaps: [
          {
            reason: 'needs-judgement',
            why: expect.stringContaining(why) as string,
            places: [{ element: 'braille/0' }, { element: 'lettering/0' }],
          },
        ],
      })
  })

  test('says the wrong words whichever way it lies', () => {
    for (const change of [{ rotation: 90 }, { rotation: 180 }, { mirrored: true }]) {
      const { observations, gaps } = measured(asDrawn(wrong(UPRIGHT), change), WORDS)
      expect([observations.map(({ value }) => value), gaps]).toEqual([[false], []])
      expect(observations[0]?.context).not.toHaveProperty('lying')
    }
  })
})

describe('what was not read', () => {
  const [block] = UPRIGHT.braille
  const unread = (...cells: (Unknown | undefined)[]): BrailleBlock => ({
    ...block,
    lines: cells.map((one, i) => ({ ...block.lines[i % 2], ...(one && { cells: one }) })),
  })

  test('is told of every line of braille that it is of', () => {
    const ask = { pointer: '/sign/braille/0/text', ask: 'What does the braille say?' }
    expect(unreadCells(unread(undefined, UNREADABLE), 0)).toEqual([
      { reason: 'unreadable', why: UNREADABLE.why, places: [block.lines[1]?.place], ask },
    ])
    expect(unreadCells(unread(UNREADABLE, UNREADABLE), 0)).toHaveLength(2)
    expect(unreadCells(block, 0)).toEqual([])
    expect(unreadCells({ ...block, lines: [] }, 0)).toEqual([
      { reason: 'missing-fact', why: 'the cells are not given', places: [block.place], ask },
    ])
  })

  test('is told of every raised text', () => {
    const sign = asDrawn(UPRIGHT, {}, { text: missing('no words') })
    const pairs = () => undefined
    const [set] = sign.lettering
    expect(unreadText({ sign, translator, scope: RAISED, pairs })).toEqual([
      {
        reason: 'missing-fact',
        why: 'no words',
        places: [set?.place],
        ask: { pointer: '/sign/lettering/0/text', ask: 'What do the raised characters say?' },
      },
    ])
    expect(unreadText({ sign: UPRIGHT, translator, scope: RAISED, pairs })).toEqual([])
  })

  test('leaves the words open, and the capitals of that block', () => {
    const sign = { ...UPRIGHT, braille: [unread(undefined, UNREADABLE)] }
    expect(measured(sign, WORDS)).toMatchObject({ observations: [], gaps: [{ reason: 'unreadable' }] })
    expect(measured(sign, 'braille.capitals')).toMatchObject({ observations: [], gaps: [{ reason: 'unreadable' }] })
  })
})

describe('whether there is braille for the raised text', () => {
  const REPEATS = 'braille.repeatsRaisedText'

  test('is a plain yes or no, at the braille or at the text', () => {
    expect(measured(signOf(PUMP_ROOM), REPEATS).observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'braille/0' }] },
    ])
    expect(measured(signOf(PUMP_ROOM, { braille: [] }), REPEATS).observations).toMatchObject([
      { value: false, basis: 'declared', places: [{ element: 'lettering/0' }], remark: 'There is no braille.' },
    ])
    expect(measured(signOf(PUMP_ROOM, { lettering: [] }), REPEATS).nothing).toBe('The sign has no raised characters.')
  })

  test('is open where a description has some and the drawing shows none', () => {
    const undrawn: Unknown = { unknown: 'missing-fact', why: 'the drawing shows no braille' }
    const none = asDrawn(signOf(PUMP_ROOM), { undrawn })
    expect(measured(none, REPEATS)).toMatchObject({
      observations: [],
      gaps: [{ reason: 'missing-fact', why: 'the drawing shows no braille', places: [{ element: 'braille/0' }] }],
    })
    const some = { ...none, braille: [...none.braille, ...signOf(PUMP_ROOM).braille] }
    expect(measured(some, REPEATS).observations[0]?.value).toBe(true)
  })
})

describe('capitals', () => {
  const capital = (text: string, properNames?: string[]) =>
    signOf(PUMP_ROOM, { 'braille.0.lines': [text], 'braille.0.lineSpacing': undefined, properNames })

  test('have their place, and what was found of them', () => {
    expect(measured(capital('pump room', []), 'braille.capitals').observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'braille/0' }] },
    ])
    const [one] = measured(capital('Pump room', []), 'braille.capitals').observations
    expect([one?.value, typeof one?.remark]).toEqual([false, 'string'])
  })

  test('of words that may be names wait for the list of names', () => {
    expect(measured(capital('Pump room'), 'braille.capitals')).toMatchObject({
      observations: [],
      gaps: [
        {
          reason: 'missing-fact',
          places: [{ element: 'braille/0' }],
          ask: { pointer: '/sign/properNames', ask: expect.stringMatching(/\?$/u) as string },
        },
      ],
    })
  })

  test('of cells that say nothing are not read, and nothing is asked', () => {
    const sign = drawnSign()
    const [first] = sign.braille
    const odd = { ...first, lines: [{ ...first.lines[0], cells: drawn('⠠⠠⠠⠠') }] }
    const { gaps } = measured({ ...sign, braille: [odd] }, 'braille.capitals')
    for (const gap of gaps) expect([gap.reason, gap.ask]).toEqual(['unreadable', undefined])
  })
})
