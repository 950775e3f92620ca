import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import type { Judgement } from '../../src/judge/finding.js'
import { Report } from '../../src/report/schema.js'
import { MOST_PLACES } from '../../src/report/finding.js'
import { VERSION } from '../../src/version.js'
import packageJson from '../../package.json' with { type: 'json' }
import { judgement, LINE, observation, requirement, sampleInput, sampleReport, sampleSign } from './sample.js'

const ofForce = (force: 'shall' | 'should' | 'advice', changes: Partial<Judgement>): Judgement =>
  judgement({ requirement: requirement('us-ada-2010/703.3.1/cell-spacing', { force }), ...changes })

const verdictOf = (rows: Judgement[]) => sampleReport(sampleSign(), rows).verdict

describe('the report', () => {
  it('is what its schema says, with nothing more and nothing less', () => {
    const report = sampleReport()
    expect(Report.parse(report)).toEqual(report)
    expect(Report.parse(JSON.parse(JSON.stringify(report)))).toEqual(report)
  })

  it('has a JSON Schema in which every part has a description', () => {
    const schema = z.toJSONSchema(Report, { target: 'draft-2020-12' })
    const parts = Object.entries(schema.$defs ?? {})
    expect(parts.map(([name]) => name)).toContain('Finding')
    for (const [name, part] of parts) expect(part.description, name).toBeTruthy()
  })

  it('is the same to the byte for the same question', () => {
    expect(JSON.stringify(sampleReport())).toBe(JSON.stringify(sampleReport()))
  })

  it('has an id of the question alone', () => {
    const { id } = sampleReport()
    expect(id).toMatch(/^chk_[0-9a-f]{32}$/)
    const other = (changes: Partial<typeof sampleInput>) =>
      sampleReport(undefined, undefined, { ...sampleInput, ...changes }).id
    expect(other({ drawing: new Uint8Array([1]) })).not.toBe(id)
    expect(other({ options: { ...sampleInput.options, decisionRule: 'guarded' } })).not.toBe(id)
    expect(other({ sign: { use: 'gift' } as unknown as NonNullable<(typeof sampleInput)['sign']> })).not.toBe(id)
    expect(other({})).toBe(id)
  })

  // The rules are those of our own contract for reports.
  it('gives a verdict by what is required and never by advice', () => {
    const open: Partial<Judgement> = { verdict: 'undetermined', reason: 'missing-fact' }
    expect(verdictOf([ofForce('shall', {}), ofForce('shall', open)])).toBe('fail')
    expect(verdictOf([ofForce('shall', open), ofForce('shall', { verdict: 'pass' })])).toBe('undetermined')
    expect(verdictOf([ofForce('shall', { verdict: 'pass' }), ofForce('advice', {}), ofForce('should', open)])).toBe(
      'pass',
    )
    expect(verdictOf([ofForce('shall', { verdict: 'not-applicable' }), ofForce('advice', {})])).toBe('not-applicable')
    expect(verdictOf([])).toBe('not-applicable')
  })

  it('gives each stage its own verdict and counts every finding once', () => {
    const { stages, summary, findings } = sampleReport()
    expect(stages).toEqual({ drawing: 'fail', product: 'fail', site: 'undetermined' })
    expect(summary).toEqual({ pass: 1, fail: 4, undetermined: 4, notApplicable: 1 })
    expect(findings).toHaveLength(10)
  })

  it('gives the mean, the extremes and the count over all observations', () => {
    const seen = [observation(6, { min: 5.9, max: 6.1, count: 3 }), observation(7, { min: 7, max: 7, count: 1 })]
    const row = judgement({ decisive: [seen[0] ?? observation(0)] })
    if (row.measurement) row.measurement.observations = seen
    const [finding] = sampleReport(sampleSign(), [row]).findings
    expect(finding?.measured).toMatchObject({ value: 6.25, min: 5.9, max: 7.0, count: 4, unit: 'mm', basis: 'drawn' })
    expect(finding?.measured?.inches).toBeCloseTo(6.25 / 25.4, 9)
  })

  it('asks each question once, with all that it decides', () => {
    const { questions } = sampleReport()
    const panel = questions.filter((q) => q.pointer === '/sign/installation/panelBottomHeight')
    expect(panel).toHaveLength(1)
    expect(panel[0]?.decides).toEqual(['us-ada-2010/703.4.1/lowest-baseline', 'us-ada-2010/703.4.1/highest-baseline'])
  })

  it('lists for the bench what a gauge would decide, and nothing that needs a judgement', () => {
    const names = sampleReport().toMeasure.map((item) => item.requirement)
    expect(names).toContain('us-ada-2010/703.3.1/dot-height')
    const [item] = sampleReport().toMeasure
    expect(item?.how).toBeTruthy()
    const eye = ofForce('shall', { verdict: 'undetermined', reason: 'needs-judgement' })
    expect(sampleReport(sampleSign(), [eye]).toMeasure).toEqual([])
  })

  it('caps the places of one finding and counts them all', () => {
    const places = Array.from({ length: MOST_PLACES + 40 }, (_, i) => ({ ...LINE, element: `braille/0/line/${i}` }))
    const row = judgement({ decisive: [observation(5.8, { places })] })
    const [finding] = sampleReport(sampleSign(), [row]).findings
    expect(finding?.where).toHaveLength(MOST_PLACES)
    expect(finding?.whereTotal).toBe(MOST_PLACES + 40)
  })

  it('keeps a fingerprint when other things change and changes it for another sign or another offender', () => {
    const print = (report: Report) => report.findings.find((f) => f.requirement.endsWith('cell-spacing'))?.fingerprint
    const base = print(sampleReport())
    expect(print(sampleReport(sampleSign({ use: 'exit-door', assumptions: [] })))).toBe(base)
    expect(print(sampleReport(sampleSign(), [judgement({}, 5.7)]))).toBe(base)
    expect(print(sampleReport(sampleSign({ mark: 'L-18' })))).not.toBe(base)
    const elsewhere = judgement({
      decisive: [observation(5.8, { places: [{ ...LINE, element: 'braille/1/line/0' }] })],
    })
    expect(print(sampleReport(sampleSign(), [elsewhere]))).not.toBe(base)
  })

  it('carries the version of the package', () => {
    expect(VERSION).toBe(packageJson.version)
    expect(sampleReport().engine.version).toBe(packageJson.version)
  })
})
