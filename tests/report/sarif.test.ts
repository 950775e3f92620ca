import { createRequire } from 'node:module'
import Ajv from 'ajv-draft-04'
import addFormats from 'ajv-formats'
import type { Log, Result } from 'sarif'
import { describe, expect, it } from 'vitest'
import { reportSarif } from '../../src/report/sarif.js'
import { DRAWING, messageText, PROGRAM } from '../../src/report/sarif-location.js'
import type { Report } from '../../src/report/schema.js'
import { judgement, sampleReport, sampleSign } from './sample.js'

/**
 * The published schema of SARIF 2.1.0 (its revision rtm.5), as the package of another maker carries it, and ajv. Sections are
 * those of the OASIS Standard.
 */
const schema = createRequire(import.meta.url)('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json') as object
const validate = addFormats
  .default(new Ajv.default({ strict: false, allErrors: true, unicodeRegExp: false }))
  .compile(schema)

const logOf = (report: Report, artifact = DRAWING): Log => {
  const log = JSON.parse(reportSarif(report, artifact)) as Log
  expect(validate(log), JSON.stringify(validate.errors)).toBe(true)
  return log
}
const runOf = (report: Report) => logOf(report).runs[0]
const resultsOf = (report: Report): Result[] => runOf(report)?.results ?? []

describe('the report as SARIF 2.1.0', () => {
  it('keeps the published schema, which refuses what it should', () => {
    const log = logOf(sampleReport())
    expect(validate({ ...log, version: '2.0.0' })).toBe(false)
    expect(validate({ ...log, runs: [{ ...log.runs[0], results: [{ kind: 'maybe', message: { text: '' } }] }] })).toBe(
      false,
    )
  })

  it('has one rule and one result a finding, the result pointing at its rule (3.27.6)', () => {
    const report = sampleReport()
    const rules = runOf(report)?.tool.driver.rules ?? []
    expect(rules.map(({ id }) => id)).toEqual(report.findings.map(({ requirement }) => requirement))
    resultsOf(report).forEach((result, i) => {
      expect(rules[result.ruleIndex ?? -1]?.id).toBe(result.ruleId)
      expect(result.partialFingerprints).toEqual({ 'finding/v1': report.findings[i]?.fingerprint })
    })
  })

  it.each([
    ['pass', null, 'pass'],
    ['fail', null, 'fail'],
    ['undetermined', 'missing-fact', 'open'],
    ['undetermined', 'within-uncertainty', 'open'],
    ['undetermined', 'unreadable', 'open'],
    ['undetermined', 'limit-reached', 'open'],
    ['undetermined', 'needs-judgement', 'review'],
    ['not-applicable', null, 'notApplicable'],
  ] as const)('says %s (%s) as %s (3.27.9)', (verdict, reason, kind) => {
    const report = sampleReport()
    const findings = report.findings.slice(0, 1).map((finding) => ({ ...finding, verdict, reason }))
    const [result] = resultsOf({ ...report, findings })
    expect(result?.kind).toBe(kind)
    // 3.27.10: a level other than none is for failures alone.
    expect(result?.level === 'none').toBe(kind !== 'fail')
  })

  it('gives a failure the level of its force', () => {
    const report = sampleReport(sampleSign(), [judgement()])
    const level = (force: 'shall' | 'should' | 'advice') =>
      resultsOf({ ...report, findings: report.findings.map((f) => ({ ...f, force })) })[0]?.level
    expect([level('shall'), level('should'), level('advice')]).toEqual(['error', 'warning', 'note'])
  })

  it('points at the line and column of the drawing, and names the part', () => {
    const [result] = resultsOf(sampleReport(sampleSign(), [judgement()]))
    // The place of the invented sign in tests/report/sample.ts.
    expect(result?.locations?.[0]).toMatchObject({
      physicalLocation: {
        artifactLocation: { uri: 'drawing.svg', index: 0 },
        region: { startLine: 41, startColumn: 3 },
      },
      logicalLocations: [{ fullyQualifiedName: 'braille/0/line/0' }],
      properties: { box: { x: 30, y: 78 } },
    })
    const artifacts = logOf(sampleReport(sampleSign(), [judgement()]), PROGRAM).runs[0]?.artifacts
    expect(artifacts?.map(({ location }) => location?.uri)).toEqual(['program.nc'])
  })

  it('names the pointer of what was described, and no artifact when nothing was drawn', () => {
    const report = sampleReport(sampleSign({ ignored: [] }), [judgement()])
    const findings = report.findings.map((finding) => ({
      ...finding,
      where: [{ element: 'braille/0', box: null, source: null, pointer: '/sign/braille/0/cellSpacing' }],
    }))
    const run = runOf({ ...report, findings, unread: [] })
    expect(run?.results?.[0]?.locations).toEqual([
      {
        logicalLocations: [
          { fullyQualifiedName: 'braille/0', kind: 'element' },
          { fullyQualifiedName: '/sign/braille/0/cellSpacing', kind: 'value' },
        ],
      },
    ])
    expect(run?.artifacts).toBeUndefined()
  })

  it('tells what was not looked at, and that it is no certification', () => {
    const run = runOf(sampleReport())
    const told = run?.invocations?.[0]?.toolExecutionNotifications ?? []
    expect(told.map(({ message }) => message.text)).toContain('An image is not looked at.')
    expect(JSON.stringify(run?.properties?.caveats)).toContain('certif')
  })

  it('lets no text of a client be a placeholder or a link (3.11.5, 3.11.6)', () => {
    expect(messageText('{0} [here](http://example.com) \\')).toBe('{{0}} \\[here\\](http://example.com) \\\\')
  })

  it('is the same for the same report', () => {
    expect(reportSarif(sampleReport(), DRAWING)).toBe(reportSarif(sampleReport(), DRAWING))
  })
})
