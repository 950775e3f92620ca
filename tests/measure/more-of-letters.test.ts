import { describe, expect, test } from 'vitest'
import { missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign, rectangle } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** Words, case, direction and finish of characters, and what stands in the field of a pictogram. Words and sizes are invented. */

type Json = Record<string, unknown>
const SET = (PUMP_ROOM.lettering as Json[])[0]
const at = (values: Json = {}) => signOf(PUMP_ROOM, values)

describe('the gaps between words of a drawing', () => {
  // NCC 2022, S15C3, as reported: 10 mm or more between words. A gap counts as one between words from 1.3 times the next (our own figure).
  function line(text: string | undefined, bars: [number, number][], more: Partial<Lettering> = {}): Sign {
    const sign = drawnSign()
    const [set] = sign.lettering
    const said = text === undefined ? missing('no words') : drawn(text)
    const outlines = bars.map(([x, width]) => rectangle(x, 20, width, 20))
    return { ...sign, lettering: [{ ...set, text: said, lines: [{ ...set.lines[0], text: said, outlines }], ...more }] }
  }
  const of = (sign: Sign) => measured(sign, 'raised.wordSpacing')
  const TWO: [number, number][] = [
    [20, 10],
    [34, 10],
    [56, 10],
    [70, 10],
  ]

  test('are the widest, as many as the words ask for', () => {
    expect(of(line('AB CD', TWO)).observations).toMatchObject([
      { value: 12, min: 12, max: 12, count: 1, basis: 'drawn', places: [{ element: 'lettering/0/line/0' }] },
    ])
    const three: [number, number][] = [
      [20, 10],
      [45, 10],
      [59, 10],
      [81, 10],
    ]
    expect(of(line('A BC D', three)).observations).toMatchObject([{ value: 13.5, min: 12, max: 15, count: 2 }])
  })

  test('are told in whatever order the outlines come, a counter within its letter', () => {
    expect(of(line('AB CD', [...TWO].reverse())).observations[0]?.value).toBe(12)
    expect(of(line('AB CD', [...TWO, [22, 3], [58, 3]])).observations[0]?.value).toBe(12)
    // an outline that touches the next runs together with it, as far as the longer of them goes
    expect(
      of(
        line('AB CD', [
          [20, 14],
          [22, 3],
          [34, 10],
          [56, 10],
          [70, 10],
        ]),
      ).observations[0]?.value,
    ).toBe(12)
  })

  test('are not told where they are not clearly wider than those between characters', () => {
    const nearly = (gap: number) =>
      of(
        line('AB CD', [
          [20, 10],
          [40, 10],
          [50 + gap, 10],
          [70 + gap, 10],
        ]),
      )
    expect(nearly(13).observations[0]?.value).toBe(13)
    expect(nearly(12.9).gaps).toMatchObject([{ reason: 'unreadable', places: [{ element: 'lettering/0/line/0' }] }])
    expect(
      of(
        line('A B C', [
          [20, 10],
          [40, 10],
        ]),
      ).gaps,
    ).toMatchObject([{ reason: 'unreadable' }])
    expect(
      of(
        line('A B', [
          [20, 10],
          [40, 10],
        ]),
      ).observations[0]?.value,
    ).toBe(10)
  })

  test('are as a client says, or are asked for where the words were not read', () => {
    expect(of(line('AB CD', TWO, { wordSpacing: { value: 9, basis: 'declared' } })).observations[0]?.value).toBe(9)
    expect(of(line(undefined, TWO)).gaps).toMatchObject([
      {
        reason: 'missing-fact',
        why: 'no words',
        places: [{ element: 'lettering/0/line/0' }],
        ask: { pointer: '/sign/lettering/0/wordSpacing', unit: 'mm' },
      },
    ])
    expect(of(line('ABCD', TWO)).nothing).toContain('two words')
  })

  test('of a line of one word beside one of two are those of the two', () => {
    const sign = line('AB CD', TWO)
    const [set] = sign.lettering
    const single = { ...set.lines[0], text: drawn('AB'), outlines: [rectangle(20, 60, 10, 20)] }
    expect(of({ ...sign, lettering: [{ ...set, lines: [...set.lines, single] }] }).observations).toHaveLength(1)
  })
})

describe('the case of the letters', () => {
  const caseOf = (text: string, quantity = 'visual.case') =>
    measured(
      at({ 'lettering.0.text': text, 'lettering.0.lines': [text], 'lettering.0.baselineSpacing': undefined }),
      quantity,
    )

  // The Unicode Standard, general categories Lu, Ll and Lt
  test.each([
    ['PUMP', 'upper', true],
    ['pump', 'lower', false],
    ['Pump', 'mixed', false],
    ['ÉCOLE 2', 'upper', true],
    ['ǅUBA', 'mixed', false],
  ])('“%s” is %s', (text, kind, upper) => {
    expect(caseOf(text).observations).toMatchObject([
      {
        value: kind,
        basis: 'declared',
        places: [{ element: 'lettering/0' }],
        remark: `The characters read “${text}”.`,
      },
    ])
    expect(caseOf(text, 'raised.case').observations[0]?.value).toBe(upper)
  })

  test('is none of figures, and is asked where the words are not known', () => {
    expect(caseOf('12 – 14').nothing).toContain('no letters')
    const sign = at()
    const unread = { ...sign, lettering: sign.lettering.map((set) => ({ ...set, text: missing() })) }
    expect(measured(unread, 'raised.case')).toMatchObject({
      observations: [],
      gaps: [{ places: [{ element: 'lettering/0' }], ask: { pointer: '/sign/lettering/0/text' } }],
    })
  })
})

describe('level with the panel', () => {
  const LEVEL = 'raised.horizontal'
  const lying = (letters: number | undefined, dots: number, sides?: number): Sign => {
    const sign = drawnSign()
    return {
      ...sign,
      panel: { ...sign.panel, ...(sides !== undefined && { turned: { rotation: sides, corners: [] } }) },
      lettering: sign.lettering.map((l) => ({
        ...l,
        ...(letters !== undefined && { lie: { rotation: letters, mirrored: false } }),
      })),
      braille: sign.braille.map((b) => ({
        ...b,
        rotation: dots,
        place: { ...b.place, source: { line: 1, column: 1 } },
      })),
    }
  }
  const values = (sign: Sign) => measured(sign, LEVEL).observations.map(({ value }) => value)

  test('are lines within a degree of each other and of the panel', () => {
    expect(values(lying(0, 1))).toEqual([true, true])
    expect(values(lying(0, 1.01))).toEqual([true, false])
    expect(values(lying(0, 359.5))).toEqual([true, true])
    expect(values(lying(30, 30, 30))).toEqual([true, true])
    expect(measured(lying(30, 30), LEVEL).gaps).toMatchObject([
      { reason: 'unreadable', places: [{ element: 'lettering/0' }] },
      { reason: 'unreadable', places: [{ element: 'braille/0' }] },
    ])
    expect(values(lying(0, 180))).toEqual([true, false])
  })

  test('say whether they were drawn', () => {
    expect(measured(lying(0, 0), LEVEL).observations).toMatchObject([{ basis: 'drawn' }, { basis: 'drawn' }])
    expect(measured(at(), LEVEL).observations[0]).toMatchObject({
      basis: 'declared',
      places: [{ element: 'lettering/0' }],
      remark: 'The lines of a description run level with the panel.',
    })
    expect(measured(at({ lettering: [], braille: [] }), LEVEL).nothing).toBeDefined()
  })

  test('were not read where outlines or cells were not', () => {
    expect(measured(lying(undefined, 0), LEVEL).gaps).toMatchObject([{ places: [{ element: 'lettering/0' }] }])
    const cells = (unknown: 'unreadable' | 'missing-fact') => {
      const sign = lying(0, 0)
      const braille = sign.braille.map((b) => ({
        ...b,
        lines: b.lines.map((line, i) => (i === 0 ? { ...line, cells: { unknown, why: 'no cells' } } : line)),
      }))
      return measured({ ...sign, braille }, LEVEL).gaps.length
    }
    expect([cells('unreadable'), cells('missing-fact')]).toEqual([1, 0])
  })
})

describe('the finish', () => {
  test('of the panel is that of what has none of its own, and is asked once', () => {
    const own = at({ 'lettering.0.finish': 'satin' })
    expect(measured(own, 'visual.finish').observations).toMatchObject([
      { value: 'matte', places: [{ element: 'panel' }] },
      { value: 'satin', places: [{ element: 'lettering/0' }] },
    ])
    const none = at({ 'panel.finish': undefined, lettering: [SET, { ...SET, text: 'PUMPS', lines: ['PUMPS'] }] })
    const { gaps } = measured(none, 'visual.finish')
    expect(gaps).toMatchObject([{ ask: { pointer: '/sign/panel/finish' } }])
    expect(gaps[0]?.ask?.choices).toContain('glossy')
    expect(measured(at({ lettering: [] }), 'visual.finish').nothing).toContain('no characters')
  })

  test('that a drawing leaves unread is open', () => {
    const sign = at()
    const finish = { unknown: 'unreadable' as const, why: 'a pattern' }
    const unread = { ...sign, lettering: sign.lettering.map((set) => ({ ...set, finish })) }
    expect(measured(unread, 'visual.finish').gaps).toMatchObject([
      { reason: 'unreadable', ask: { pointer: '/sign/lettering/0/finish', choices: expect.any(Array) as [] } },
    ])
  })
})

// 2010 ADA Standards, table 407.4.7.1.3, and 407.4.7.1.2: the words that belong to the symbols of controls
describe('the braille of a control', () => {
  const control = (meaning: string, ...words: (string | undefined)[]) =>
    measured(
      at({
        pictograms: [{ meaning }],
        braille: words.map((text, i) => ({
          ...(PUMP_ROOM.braille as Json[])[0],
          lines: undefined,
          lineSpacing: undefined,
          ...(text !== undefined && { text }),
          origin: { x: 20, y: 90 + 20 * i },
        })),
      }),
      'braille.controlWords',
    )

  test.each([
    ['emergency stop', 'stop'],
    ['stop', 'stop'],
    ['Alarm bell', 'alarm'],
    ['door-open', 'open'],
    ['close door', 'close'],
    ['main entry floor', 'main'],
    ['telephone', 'phone'],
  ])('%s is “%s”', (meaning, word) => {
    expect(control(meaning, word).observations).toMatchObject([
      { value: true, basis: 'declared', places: [{ element: 'pictogram/0' }, { element: 'braille/0' }] },
    ])
    expect(control(meaning, 'pump').observations[0]).toMatchObject({
      value: false,
      remark: `The table gives the word “${word}”.`,
    })
  })

  test('may be in any of several blocks, or in one that was not read', () => {
    expect(control('alarm', 'pump', 'alarm').observations[0]?.value).toBe(true)
    expect(control('alarm', 'alarm', undefined).observations[0]?.value).toBe(true)
    expect(control('alarm', 'pump', undefined)).toMatchObject({
      observations: [],
      gaps: [{ reason: 'unreadable', places: [{}, {}, {}] }],
    })
    expect(control('pump', 'pump').nothing).toContain('No pictogram')
    expect(control('bus stop', 'stop').nothing).toContain('No pictogram')
  })

  test('that was drawn says so', () => {
    const sign = at({ pictograms: [{ meaning: 'alarm' }] })
    const cells = sign.braille.map((b) => ({ ...b, lines: b.lines.map((line) => ({ ...line, cells: drawn('⠁') })) }))
    expect(measured({ ...sign, braille: cells }, 'braille.controlWords').observations[0]?.basis).toBe('drawn')
  })
})
