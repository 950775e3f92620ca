import { describe, expect, test } from 'vitest'
import { PUMP_ROOM, signOf } from '../measure/signs.js'
import { judgementOf } from './verdicts.js'

/** JCGM 106:2012, 8.3: a value within its expanded uncertainty of a limit decides nothing. The readings are invented. */

const GUARDED = { decisionRule: 'guarded' as const }

const withReliefs = (...measured: Record<string, unknown>[]) =>
  signOf(PUMP_ROOM, { measured: measured.map((one) => ({ quantity: 'raised.relief', ...one })) })

describe('several readings under the guarded rule', () => {
  // 2010 ADA Standards 703.2.1: 1/32 inch minimum
  test('shows the reading that leaves the row open, though another without uncertainty is nearer to the limit', () => {
    const sign = withReliefs({ values: [0.8] }, { values: [0.82], expandedUncertainty: 0.05 })
    const judgement = judgementOf(sign, '703.2.1/relief', GUARDED)
    expect(judgement).toMatchObject({ verdict: 'undetermined', reason: 'within-uncertainty' })
    expect(judgement.decisive.map(({ value }) => value)).toEqual([0.82])
    expect(judgement.margin).toBeCloseTo(0.82 - 25.4 / 32, 9)
  })

  test('shows the nearest of several that leave it open', () => {
    const sign = withReliefs(
      { values: [0.84], expandedUncertainty: 0.06 },
      { values: [0.82], expandedUncertainty: 0.05 },
      { values: [0.8] },
    )
    expect(judgementOf(sign, '703.2.1/relief', GUARDED).decisive[0]?.value).toBe(0.82)
  })

  test('shows the nearest of all where none is open, and the worst where one fails', () => {
    expect(judgementOf(withReliefs({ values: [0.9] }, { values: [0.8] }), '703.2.1/relief').decisive[0]?.value).toBe(
      0.8,
    )
    const failed = judgementOf(
      withReliefs({ values: [0.82], expandedUncertainty: 0.05 }, { values: [0.7], expandedUncertainty: 0.01 }),
      '703.2.1/relief',
      GUARDED,
    )
    expect(failed).toMatchObject({ verdict: 'fail' })
    expect(failed.decisive[0]?.value).toBe(0.7)
  })
})

describe('several finishes', () => {
  // contract of the service: satin needs a person's judgement, matte passes (2010 ADA Standards 703.5.1)
  test('shows the one that a person must judge', () => {
    const sign = signOf(PUMP_ROOM, { 'panel.finish': 'matte', 'lettering.0.finish': 'satin' })
    const judgement = judgementOf(sign, '703.5.1/finish')
    expect(judgement).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(judgement.decisive[0]?.value).toBe('satin')
  })
})
