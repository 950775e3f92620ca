import { readFileSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../src/braille/engine.js'
import { check } from '../../src/check.js'
import { reportJson } from '../../src/report/json.js'
import { Report } from '../../src/report/schema.js'
import { SignDescription } from '../../src/sign/description.js'
import { judgement, observation, sampleReport, sampleSign } from './sample.js'

/**
 * The writer against the one of the language (ECMA-262, JSON.stringify) on reports whose keys the schema has put in order. The
 * signs and texts are invented.
 */

const FOLDER = new URL('../../docs/examples/', import.meta.url)
const NAMES = readdirSync(FOLDER).flatMap((name) => (name.endsWith('.json') ? [name.replace('.json', '')] : []))
const translator = createTranslator()

const plain = (report: Report): string => JSON.stringify(Report.parse(report))
const written = (report: Report): string => reportJson(report).toString('utf8')

function exampleOf(name: string, changes: Partial<SignDescription> = {}): Report {
  const described = JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8')) as object
  const sign = SignDescription.parse({ ...described, ...changes })
  const svg = `${name}.svg`
  const drawing = readdirSync(FOLDER).includes(svg) ? readFileSync(new URL(svg, FOLDER)) : undefined
  const options = { use: sign.use, decisionRule: 'guarded', unitSystem: 'both', language: 'en' } as const
  return check({ drawing, sign, standards: ['us-ada-2010'], options }, translator)
}

describe('the report as JSON', () => {
  it.each(NAMES)('is that of the language for %s, the first time and again', (name) => {
    const report = exampleOf(name)
    expect(written(report)).toBe(plain(report))
    expect(written(report)).toBe(plain(report))
  })

  it('is so for each use of a sign in turn, so that no row keeps the reason of another use', () => {
    for (const use of ['gift', 'directory', 'exit-door', 'permanent-room', 'gift'] as const) {
      const report = exampleOf('restroom', { use })
      expect(written(report)).toBe(plain(report))
    }
  })

  it.each(['say "so"', 'back\\slash', 'tab\tand\u0000', 'half \ud83d', 'whole 😀 ⠗⠂⠙ é', '\u2028'])(
    'holds %j',
    (text) => {
      const row = judgement({
        decisive: [observation('satin', { basis: 'measured', remark: text, instrument: text })],
        because: text,
        gaps: [{ reason: 'unreadable', why: text, places: [{ element: text }] }],
      })
      const rows = (['fail', 'undetermined', 'not-applicable'] as const).map((verdict) => ({ ...row, verdict }))
      const report = sampleReport(sampleSign({ mark: text }), rows)
      expect(written(report)).toBe(plain(report))
      expect(written(report)).toContain(JSON.stringify(text).slice(1, -1))
    },
  )

  it('is not taken from what was kept when a part of a finding is another', () => {
    const report = sampleReport()
    written(report)
    const changed = report.findings.map((finding, i) => (i % 2 === 0 ? { ...finding, title: `Row ${i}` } : finding))
    const other = { ...report, findings: changed }
    expect(written(other)).toBe(plain(other))
    expect(written(other)).toContain('"title":"Row 0"')
  })

  it('stays as it is while others are written, and may be of any length', () => {
    const report = exampleOf('restroom')
    const first = reportJson(report)
    for (let n = 0; n < 40; n++) reportJson(exampleOf('kiln-room', { mark: `M-${n}` }))
    expect(first.toString()).toBe(plain(report))
    const [finding] = report.findings
    const long = { ...report, findings: Array.from({ length: 3000 }, () => ({ ...finding, message: 'é'.repeat(200) })) }
    expect(written(long)).toBe(plain(long))
    expect(first.toString()).toBe(plain(report))
  })
})
