import { describe, expect, it } from 'vitest'
import type { Judgement } from '../../src/judge/finding.js'
import { judgement, LINE, observation, requirement, sampleInput, sampleReport, sampleSign } from './sample.js'

const caveats = (sign = sampleSign(), rows: Judgement[] = [judgement()], input = sampleInput) =>
  sampleReport(sign, rows, input).caveats.join('\n')

const pass = (basis: 'declared' | 'drawn' | 'measured'): Judgement => {
  const seen = [observation(6.9, { basis })]
  const row = judgement({ verdict: 'pass', decisive: seen, margin: 0.7 })
  return { ...row, measurement: row.measurement && { ...row.measurement, observations: seen } }
}

// What must be said is fixed by our own contract for reports.
describe('caveats', () => {
  it('always says what a report is not', () => {
    const text = caveats()
    for (const words of [
      'not a certification',
      'State and local codes may be stricter',
      'authority having jurisdiction',
      'licence',
    ])
      expect(text).toContain(words)
  })

  it('says more of exit signs and gifts, and only of them', () => {
    expect(caveats(sampleSign({ use: 'exit-door' }))).toContain('life-safety')
    expect(caveats(sampleSign({ use: 'gift' }))).toContain('No code asks for anything of a gift')
    expect(caveats()).not.toMatch(/life-safety|gift/)
  })

  it('names a stage that passes on declared values alone', () => {
    expect(caveats(sampleSign(), [pass('declared')])).toContain('The drawing stage passes on declared values alone')
    expect(caveats(sampleSign(), [pass('declared'), pass('drawn')])).not.toContain('declared values alone')
    expect(caveats(sampleSign(), [pass('measured')])).not.toContain('declared values alone')
    expect(caveats(sampleSign(), [pass('declared'), judgement()])).not.toContain('declared values alone')
  })

  it('names the site that passes on a declared height of the panel, whatever is drawn', () => {
    const site = (basis: 'drawn' | 'measured') => {
      const row = pass(basis)
      return { ...row, requirement: { ...row.requirement, stage: 'site' as const } }
    }
    expect(caveats(sampleSign(), [site('drawn')])).toContain('The site stage passes on declared values alone')
    expect(caveats(sampleSign(), [site('drawn'), site('measured')])).not.toContain('declared values alone')
  })

  it('names rows that were not read in the standard itself, when they were used', () => {
    const second = requirement('us-ada-2010/703.3.1/cell-spacing', {
      citation: { source: 'ADA', confidence: 'secondary' },
    })
    expect(caveats(sampleSign(), [judgement({ requirement: second })])).toContain('secondary source')
    expect(caveats(sampleSign(), [judgement({ requirement: second, verdict: 'not-applicable' })])).not.toContain(
      'secondary source',
    )
  })

  it('tells of parts that were not understood and of the decision rule', () => {
    const unread = [{ place: LINE, why: 'an image', couldBe: ['braille' as const] }]
    expect(caveats(sampleSign({ unread }))).toContain('One part of the sign was seen but not understood')
    expect(caveats()).toContain('simple decision rule')
    const guarded = { ...sampleInput, options: { ...sampleInput.options, decisionRule: 'guarded' as const } }
    expect(caveats(sampleSign(), [judgement()], guarded)).toContain('guarded decision rule')
  })
})
