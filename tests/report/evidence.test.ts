import { describe, expect, it } from 'vitest'
import { evidenceWords } from '../../src/report/evidence.js'
import { reportHtml } from '../../src/report/html.js'
import { reportSvg } from '../../src/report/svg.js'
import type { Measured } from '../../src/report/finding-schema.js'
import type { Observation } from '../../src/measure/measurement.js'
import { judgement, observation, sampleReport, sampleSign } from './sample.js'

/** What a finding rests on. The readings and the gauge are invented. */

const GAUGED: Partial<Observation> = {
  basis: 'measured',
  instrument: 'dial gauge 4711',
  min: 6.8,
  max: 7,
  count: 5,
  uncertainty: 0.015,
}

const html = (verdict: 'pass' | 'fail' | 'undetermined', value: number): string => {
  const seen = [observation(value, { ...GAUGED, min: value, max: value })]
  const measurement = {
    quantity: 'braille.cellSpacing',
    unit: 'mm' as const,
    method: 'm',
    observations: seen,
    gaps: [],
  }
  const reason = verdict === 'undetermined' ? ('within-uncertainty' as const) : null
  const report = sampleReport(sampleSign(), [judgement({ verdict, reason, measurement, decisive: seen }, value)])
  return reportHtml(report, reportSvg(report, sampleSign()))
}

describe('the page', () => {
  it.each(['pass', 'fail', 'undetermined'] as const)('tells how a value was measured: %s', (verdict) => {
    const page = html(verdict, verdict === 'fail' ? 5.8 : 6.9)
    // JCGM 100:2008, 6.2: an expanded uncertainty is the standard uncertainty times its coverage factor, here k = 2.
    expect(page.toLowerCase()).toContain('measured with dial gauge 4711, 5 values, ± 0.03 mm (k = 2)')
  })

  it('names the instruments beside the blank for what is still to be measured', () => {
    expect(html('undetermined', 6.9)).toMatch(/Measured so far with: <bdi>dial gauge 4711<\/bdi>\./)
  })
})

describe('the words', () => {
  const measured: Measured = {
    value: 0.5,
    unit: 'ratio',
    inches: null,
    min: 0.5,
    max: 0.5,
    count: 1,
    uncertainty: 0.012345,
    basis: 'measured',
    instrument: null,
    method: '',
  }

  it('write a share in percent and an uncertainty in two digits (JCGM 100:2008, 7.2.6)', () => {
    expect(evidenceWords(measured, 'raised.strokeThickness')).toBe(
      'Measured with an instrument that is not named, one value, ± 2.5 % (k = 2)',
    )
  })

  it('say that no uncertainty was given, and claim none of what is declared', () => {
    expect(evidenceWords({ ...measured, uncertainty: null }, 'raised.strokeThickness')).toContain(
      'uncertainty not given',
    )
    expect(evidenceWords({ ...measured, basis: 'declared', uncertainty: null }, 'raised.strokeThickness')).toBe(
      'Declared or assumed, not measured',
    )
  })
})
