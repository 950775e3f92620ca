import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { check } from '../../src/check.js'
import type { Finding } from '../../src/report/finding-schema.js'
import { SignDescription } from '../../src/sign/description.js'
import { PUMP_ROOM, translator, withValues } from '../measure/signs.js'

/**
 * Readings of an instrument, from the request to the report. The least dot height of the 2010 ADA Standards, 703.3.1, is 0.025 in, which
 * is 0.635 mm, the greatest 0.037 in. The readings are invented.
 */

type Rule = 'simple' | 'guarded'
interface Reading {
  values: number[]
  expandedUncertainty?: number
  unit?: 'mm' | 'in'
}

function dotHeight(readings: Reading[], decisionRule: Rule = 'simple', quantity = 'braille.dotHeight'): Finding {
  const measured = readings.map((one) => ({ quantity, unit: 'mm', ...one }))
  const sign = SignDescription.parse(withValues(PUMP_ROOM, { measured }))
  const options = { use: sign.use, decisionRule, unitSystem: 'printed', language: 'en' } as const
  const { findings } = check({ sign, standards: ['us-ada-2010'], options }, translator)
  const found = findings.find((finding) => finding.quantity === quantity)
  if (!found) throw new Error(`no finding on ${quantity}`)
  return found
}

describe('a dot height of 0.64 mm with an expanded uncertainty of 0.02 mm', () => {
  const reading = { values: [0.64], expandedUncertainty: 0.02 }

  test('is open under the guarded rule and passes under the simple one', () => {
    expect(dotHeight([reading], 'guarded')).toMatchObject({ verdict: 'undetermined', reason: 'within-uncertainty' })
    expect(dotHeight([reading], 'simple')).toMatchObject({ verdict: 'pass', reason: null })
  })

  // JCGM 106:2012, 7.3.2: Φ((0.640 - 0.635) / 0.010) = Φ(0.5) = 0.6915, by any table of the normal distribution; the upper limit is 30
  // standard uncertainties away
  test('keeps the limit with a probability of 0.691 under either', () => {
    for (const rule of ['simple', 'guarded'] as const) {
      const { measured } = dotHeight([reading], rule)
      expect(measured?.conformity).toMatchObject({
        value: 0.64,
        expandedUncertainty: 0.02,
        guarded: 'within-uncertainty',
      })
      expect(measured?.conformity?.probability).toBeCloseTo(0.6915, 4)
      expect(measured?.conformity?.assumption).toContain('normally distributed')
      expect(measured?.sample).toBeUndefined()
    }
  })
})

describe('several readings', () => {
  // Mean 0.72 and standard deviation √(0.0026/5) worked by hand; the factor for six readings, two sides, 95 % with 95 % confidence, is
  // 4.422 (Odeh and Owen, Tables for Normal Tolerance Limits, 1980; from memory, and by SciPy 4.4221)
  const values = [0.7, 0.74, 0.69, 0.73, 0.75, 0.71]

  test('are told with their spread and with what they say of all', () => {
    const { verdict, measured } = dotHeight([{ values }])
    expect(verdict).toBe('pass')
    expect(measured?.conformity).toBeUndefined()
    const sample = measured?.sample
    const deviation = Math.sqrt(0.0028 / 5)
    expect(sample).toMatchObject({ count: 6, interval: { coverage: 0.95, confidence: 0.95 } })
    expect(sample?.mean).toBeCloseTo(0.72, 9)
    expect(sample?.standardDeviation).toBeCloseTo(deviation, 9)
    expect(sample?.interval?.min).toBeCloseTo(0.72 - 4.4221 * deviation, 4)
    expect(sample?.interval?.max).toBeCloseTo(0.72 + 4.4221 * deviation, 4)
    expect(sample?.capability?.cpk).toBeCloseTo((0.72 - 0.635) / (3 * deviation), 6)
    expect(sample?.assumption).toContain('not tested')
  })

  test('say how many more would do, and the share is short of it until then', () => {
    const sample = dotHeight([{ values }]).measured?.sample
    expect(sample?.interval?.min).toBeLessThan(0.635)
    expect(sample?.moreReadings).toBeGreaterThan(0)
    expect(sample?.shareWithin?.atLeast).toBeLessThan(0.95)
    const close = dotHeight([{ values: [0.75, 0.751, 0.749, 0.75, 0.752, 0.748] }]).measured?.sample
    expect(close?.moreReadings).toBe(0)
    expect(close?.shareWithin?.atLeast).toBeGreaterThan(0.95)
  })

  test('of several instruments are one sample, as they are one value', () => {
    const { measured } = dotHeight([
      { values: values.slice(0, 2) },
      { values: values.slice(2), expandedUncertainty: 0.02 },
    ])
    expect(measured?.sample).toMatchObject({ count: 6 })
    expect(measured?.sample?.mean).toBe(measured?.value)
  })

  test('that fail need no more', () => {
    const { verdict, measured } = dotHeight([{ values: [0.7, 0.74, 0.6] }])
    expect(verdict).toBe('fail')
    expect(measured?.sample).toMatchObject({ count: 3, moreReadings: null })
  })

  test('that are all equal say nothing of the spread of all', () => {
    expect(dotHeight([{ values: [0.7, 0.7, 0.7] }]).measured?.sample).toMatchObject({
      standardDeviation: 0,
      interval: null,
      shareWithin: null,
      capability: null,
      moreReadings: null,
    })
  })

  test('against a limit with one end have an interval with one', () => {
    const { measured } = dotHeight([{ values: [0.9, 0.92, 0.91] }], 'simple', 'raised.relief')
    expect(measured?.sample?.interval?.max).toBeNull()
    expect(measured?.sample?.interval?.min).toBeLessThan(0.9)
    expect(measured?.sample?.capability?.cp).toBeNull()
  })
})

describe('what was not measured', () => {
  test('has neither sample nor conformity', () => {
    const sign = SignDescription.parse(withValues(PUMP_ROOM, { measured: undefined }))
    const options = { use: sign.use, decisionRule: 'guarded', unitSystem: 'both', language: 'en' } as const
    for (const { measured, requirement } of check({ sign, standards: ['us-ada-2010'], options }, translator).findings) {
      expect(measured?.sample, requirement).toBeUndefined()
      expect(measured?.conformity, requirement).toBeUndefined()
    }
  })

  test('has no conformity without an uncertainty, or with one that is said to be none', () => {
    expect(dotHeight([{ values: [0.7] }]).measured?.conformity).toBeUndefined()
    expect(dotHeight([{ values: [0.7], expandedUncertainty: 0 }]).measured?.conformity).toBeUndefined()
  })
})

describe('inches and millimetres', () => {
  /** 1 in = 25.4 mm, by definition. */
  const inInches = ({ values, expandedUncertainty = 0 }: Reading): Reading => ({
    values: values.map((value) => value / 25.4),
    expandedUncertainty: expandedUncertainty / 25.4,
    unit: 'in',
  })

  test('change no verdict and no probability', () => {
    const reading = fc.record({
      // Thousandths of a millimetre, so that values fall on the edges of guard bands too.
      values: fc.array(
        fc.integer({ min: 590, max: 980 }).map((n) => n / 1000),
        { minLength: 1, maxLength: 5 },
      ),
      expandedUncertainty: fc.integer({ min: 0, max: 60 }).map((n) => n / 1000),
    })
    fc.assert(
      fc.property(reading, fc.constantFrom<Rule>('simple', 'guarded'), (one, rule) => {
        const [mm, inch] = [dotHeight([one], rule), dotHeight([inInches(one)], rule)]
        expect(inch.verdict).toBe(mm.verdict)
        expect(inch.measured?.conformity?.guarded).toBe(mm.measured?.conformity?.guarded)
        const close = (a: number | null | undefined, b: number | null | undefined): void =>
          typeof b === 'number' ? expect(a).toBeCloseTo(b, 6) : expect(a).toBe(b)
        close(inch.measured?.conformity?.probability, mm.measured?.conformity?.probability)
        close(inch.measured?.sample?.shareWithin?.atLeast, mm.measured?.sample?.shareWithin?.atLeast)
        close(inch.measured?.sample?.capability?.cpk, mm.measured?.sample?.capability?.cpk)
        expect(inch.measured?.sample?.moreReadings).toBe(mm.measured?.sample?.moreReadings)
      }),
      { numRuns: 60, seed: 7 },
    )
  })
})
