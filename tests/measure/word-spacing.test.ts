import { describe, expect, test } from 'vitest'
import { missing, type Lettering, type Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign, rectangle } from './drawn.js'
import { measured } from './values.js'

/** Words told apart by the gaps between outlines. All places are invented. */

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
