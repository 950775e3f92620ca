import { describe, expect, it } from 'vitest'
import type { Measured } from '../../src/report/finding-schema.js'
import { reportHtml } from '../../src/report/html.js'
import { reportJson } from '../../src/report/json.js'
import { Report } from '../../src/report/schema.js'
import { statisticsWords } from '../../src/report/statistics-words.js'
import { reportSvg } from '../../src/report/svg.js'
import { judgement, observation, sampleReport, sampleSign } from './sample.js'

/** Readings in a report. They are invented; the limits are those of the sample judgement, 6.1214 to 7.62 mm. */

const READINGS = [6.9, 6.95, 6.85, 6.92, 6.88]

function reportOf(sample: number[], verdict: 'pass' | 'fail' | 'undetermined' = 'pass') {
  const seen = [
    observation(6.9, {
      basis: 'measured',
      sample,
      min: Math.min(...sample),
      max: Math.max(...sample),
      count: sample.length,
      uncertainty: 0.01,
    }),
  ]
  const measurement = {
    quantity: 'braille.cellSpacing',
    unit: 'mm' as const,
    method: 'm',
    observations: seen,
    gaps: [],
  }
  return sampleReport(sampleSign(), [judgement({ verdict, measurement, decisive: seen, reason: null }, 6.9)])
}

describe('the report', () => {
  // ECMA-262, JSON.stringify, on the report with its keys in the order of the schema
  it('writes sample and conformity as the language does', () => {
    const report = reportOf(READINGS)
    expect(reportJson(report).toString('utf8')).toBe(JSON.stringify(Report.parse(report)))
    expect(report.findings[0]?.measured).toMatchObject({ sample: { count: 5 }, conformity: { guarded: 'pass' } })
  })

  it.each(['pass', 'fail', 'undetermined'] as const)('tells on the page what the readings say: %s', (verdict) => {
    const report = reportOf(READINGS, verdict)
    const page = reportHtml(report, reportSvg(report, sampleSign()))
    expect(page.match(/Mean 6\.900 mm, standard deviation 0\.038 mm/g)).toHaveLength(1)
    expect(page).toContain(
      'The true value keeps the limit with a probability of more than 99.9 % (normal distribution).',
    )
  })
})

describe('the words', () => {
  const MEASURED: Measured = {
    value: 0.7,
    unit: 'mm',
    inches: null,
    min: 0.6,
    max: 0.8,
    count: 5,
    uncertainty: null,
    basis: 'measured',
    instrument: null,
    method: '',
  }
  const SAMPLE: NonNullable<Measured['sample']> = {
    count: 5,
    mean: 0.7,
    standardDeviation: 0.02,
    interval: { min: 0.63496, max: 0.76504, coverage: 0.95, confidence: 0.95 },
    shareWithin: { atLeast: 0.94999, confidence: 0.95 },
    capability: { cp: 1.2, cpk: 1.083, cpkMin: 0.3, cpkMax: 1.9, confidence: 0.95 },
    moreReadings: 3,
    assumption: '',
  }
  const CONFORMITY = { value: 0.64, expandedUncertainty: 0.02, guarded: 'pass' as const, assumption: '' }
  const words = (more: Partial<Measured>) => statisticsWords({ ...MEASURED, ...more }, 'braille.dotHeight')

  it('are none where nothing follows', () => {
    expect(words({})).toBe('')
  })

  it('round away from what would be saying too much', () => {
    expect(words({ sample: SAMPLE })).toBe(
      'Mean 0.700 mm, standard deviation 0.020 mm; with readings of one normal distribution, at least 95 % of all values are between 0.634 and 0.766 mm (confidence 95 %), 94.9 % or more of all keep the limit (confidence 95 %), Cpk 1.08 (0.30 to 1.90), 3 more like these would put that share within the limit.',
    )
  })

  it('name one end where there is one', () => {
    const interval = { min: 0.63496, max: null, coverage: 0.95, confidence: 0.95 }
    expect(words({ sample: { ...SAMPLE, interval } })).toContain('at least 95 % of all values are at least 0.634 mm')
    expect(words({ sample: { ...SAMPLE, interval: { ...interval, min: null, max: 0.76504 } } })).toContain(
      'are at most 0.766 mm',
    )
  })

  it('stop at the spread where nothing more follows', () => {
    const nothing = { interval: null, shareWithin: null, capability: null, moreReadings: null }
    expect(words({ sample: { ...SAMPLE, ...nothing } })).toBe('Mean 0.700 mm, standard deviation 0.020 mm.')
  })

  it('tell no probability as none or as certainty', () => {
    const said = (probability: number) => words({ conformity: { ...CONFORMITY, probability } })
    expect(said(0.691462)).toContain('a probability of 69.1 %')
    expect(said(1)).toContain('more than 99.9 %')
    expect(said(0)).toContain('less than 0.1 %')
  })
})
