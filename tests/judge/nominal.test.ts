import { describe, expect, test } from 'vitest'
import type { JudgeOptions } from '../../src/judge/types.js'
import { weigh } from '../../src/judge/weigh.js'
import type { Observation } from '../../src/measure/measurement.js'
import type { Limit } from '../../src/standards/standard.js'

/**
 * California Building Code 2019, table 11B-703.3.1: dots of a cell are "0.100 (2.5 mm)" apart, a figure without a range. Section
 * 11B-104.1.1 allows customary tolerances on such a figure; the 2010 ADA Standards, table 703.3.1, end at 0.100 in, so none goes upward.
 * The values beside the figure are invented.
 */
const INCH = 25.4
const FIGURE: Extract<Limit, { kind: 'nominal' }> = { kind: 'nominal', in: 0.1, mm: 2.5, printed: '0.100 (2.5 mm)' }
const CAPPED: Limit = { ...FIGURE, slack: 'downward' }
const SIMPLE: JudgeOptions = { decisionRule: 'simple', unitSystem: 'printed' }

const seen = (value: number, more: Partial<Observation> = {}): Observation => ({
  value,
  basis: 'declared',
  places: [],
  ...more,
})

function outcome(limit: Limit, observation: Observation, options: Partial<JudgeOptions> = {}): string {
  const measurement = { quantity: 'q', unit: 'mm' as const, method: '', observations: [observation], gaps: [] }
  const { failed, gaps, within } = weigh(measurement, () => ({ limit, clause: '' }), 'in', { ...SIMPLE, ...options })
  if (failed.length > 0) return 'fail'
  if (within) return 'within-uncertainty'
  return gaps[0]?.reason ?? 'pass'
}

describe('a length printed without a tolerance', () => {
  test('passes when it is equalled, in the unit that is printed first', () => {
    expect(outcome(FIGURE, seen(0.1 * INCH))).toBe('pass')
    expect(outcome(FIGURE, seen(2.5))).toBe('needs-judgement')
  })

  test('says on which side of the figure the sign is only where one side alone is left to a person', () => {
    const why = (limit: Limit) =>
      weigh(
        { quantity: 'q', unit: 'mm', method: '', observations: [seen(2.5)], gaps: [] },
        () => ({ limit, clause: '' }),
        'in',
        SIMPLE,
      ).gaps.map((gap) => gap.why)
    const printed = 'the standard prints 0.100 (2.5 mm) without a tolerance, and the sign'
    expect(why(FIGURE)).toEqual([`${printed} differs from it`])
    expect(why(CAPPED)).toEqual([`${printed} is below it`])
  })

  test('leaves what differs to a person, in both directions', () => {
    expect(outcome(FIGURE, seen(2.54 - 0.01))).toBe('needs-judgement')
    expect(outcome(FIGURE, seen(2.54 + 0.01))).toBe('needs-judgement')
  })
})

describe('the same with slack downward only', () => {
  test('passes when it is equalled', () => expect(outcome(CAPPED, seen(2.54))).toBe('pass'))

  test('fails above, and leaves to a person what is below', () => {
    expect(outcome(CAPPED, seen(2.54 + 0.001))).toBe('fail')
    expect(outcome(CAPPED, seen(2.54 - 0.001))).toBe('needs-judgement')
  })

  test('fails when one single value of several is above, whatever the mean is', () => {
    expect(outcome(CAPPED, seen(2.5, { min: 2.4, max: 2.55 }))).toBe('fail')
    expect(outcome(CAPPED, seen(2.5, { min: 2.4, max: 2.54 }))).toBe('needs-judgement')
  })

  test('tells by how much it is above, not by how much another value is below', () => {
    const observation = seen(2.5, { min: 2.2, max: 2.55 })
    const measurement = { quantity: 'q', unit: 'mm' as const, method: '', observations: [observation], gaps: [] }
    expect(weigh(measurement, () => ({ limit: CAPPED, clause: '' }), 'in', SIMPLE).margin).toBeCloseTo(-0.01, 9)
  })

  test('allows drawn values the noise of the arithmetic', () => {
    expect(outcome(CAPPED, seen(2.5405, { basis: 'drawn' }))).toBe('pass')
    expect(outcome(CAPPED, seen(2.542, { basis: 'drawn' }))).toBe('fail')
  })

  test('guarded, is open where the uncertainty reaches over the figure', () => {
    expect(outcome(CAPPED, seen(2.545, { uncertainty: 0.01 }), { decisionRule: 'guarded' })).toBe('within-uncertainty')
    expect(outcome(CAPPED, seen(2.57, { uncertainty: 0.01 }), { decisionRule: 'guarded' })).toBe('fail')
  })
})
