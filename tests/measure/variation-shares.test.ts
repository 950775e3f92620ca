import { describe, expect, test } from 'vitest'
import { missing, type BrailleBlock, type Sign } from '../../src/sign/sign.js'
import { drawn, drawnSign } from './drawn.js'
import { PUMP_ROOM, signOf } from './signs.js'
import { measured } from './values.js'

/** How much the sizes of braille vary: the greatest deviation from the mean, over the mean. Sizes are invented, shares worked by hand. */

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
