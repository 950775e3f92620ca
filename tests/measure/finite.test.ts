import { describe, expect, test } from 'vitest'
import { onlyNumbers } from '../../src/measure/finite.js'
import type { Observation } from '../../src/measure/measurement.js'
import { judgementOf } from '../judge/verdicts.js'
import { PUMP_ROOM, signOf } from './signs.js'

/**
 * Sizes of zero, and next to it, by which others are divided: found by fuzzing. Nothing follows from them, so that what would be reckoned by
 * them has no verdict (a number divided by zero is none: IEEE 754, 7.3). All sizes are invented.
 */

const reading = (quantity: string, ...values: number[]) => ({ measured: [{ quantity, values }] })

/** The least number above zero (IEEE 754, binary64). */
const LEAST = 5e-324

describe('a share of the character height', () => {
  test.each([
    ['that was read as zero', reading('raised.characterHeight', 0)],
    ['that is next to nothing', { 'lettering.0.characterHeight': LEAST }],
  ])('%s is open, not a failure', (_, values) => {
    const sign = signOf(PUMP_ROOM, values)
    for (const row of ['703.2.6/stroke-thickness', '703.2.8/line-spacing']) {
      const { verdict, decisive, gaps } = judgementOf(sign, row)
      expect({ verdict, decisive }).toEqual({ verdict: 'undetermined', decisive: [] })
      expect(gaps.map(({ why }) => why)).toEqual([expect.stringContaining('no figure comes of it')])
    }
  })

  test('leaves the height itself to be judged as it was read', () => {
    expect(
      judgementOf(signOf(PUMP_ROOM, reading('raised.characterHeight', 0)), '703.2.5/character-height').verdict,
    ).toBe('fail')
  })
})

describe('observations', () => {
  const at = (observation: Partial<Observation>): Observation => ({
    value: 1,
    basis: 'declared',
    places: [],
    ...observation,
  })
  const left = (observation: Partial<Observation>) => onlyNumbers({ observations: [at({}), at(observation)], gaps: [] })

  test.each<[string, Partial<Observation>]>([
    ['value', { value: NaN }],
    ['least value', { min: -Infinity }],
    ['greatest value', { max: Infinity }],
    ['uncertainty', { uncertainty: NaN }],
  ])('without a finite %s become gaps, the others stay', (_, observation) => {
    const { observations, gaps } = left({ ...observation, places: [{ element: 'lettering/1' }] })
    expect(observations).toEqual([at({})])
    expect(gaps).toMatchObject([{ reason: 'missing-fact', places: [{ element: 'lettering/1' }] }])
  })

  test.each<[string, Partial<Observation>]>([
    ['a kind', { value: 'domed' }],
    ['a yes', { value: true }],
  ])('of %s stay', (_, observation) => expect(left(observation).gaps).toEqual([]))
})
