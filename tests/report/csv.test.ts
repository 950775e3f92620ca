import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { reportCsv } from '../../src/report/csv.js'
import type { Report } from '../../src/report/schema.js'
import { judgement, sampleReport, sampleSign } from './sample.js'

/** Read back by csv-parse, which we did not write. RFC 4180. */
const rowsOf = (csv: string): Record<string, string>[] =>
  parse(csv, { bom: true, columns: true, record_delimiter: '\r\n' })

const withMark = (mark: string): Report => sampleReport(sampleSign({ mark }))
const markOf = (mark: string) => rowsOf(reportCsv(withMark(mark)))[0]?.mark

describe('the report as CSV', () => {
  it('has one row a finding, with what the report says', () => {
    const report = sampleReport()
    const rows = rowsOf(reportCsv(report))
    expect(rows).toHaveLength(report.findings.length)
    report.findings.forEach((finding, i) => {
      expect(rows[i]).toMatchObject({
        mark: report.mark,
        requirement: finding.requirement,
        verdict: finding.verdict,
        reason: finding.reason ?? '',
        limit: finding.limit.printed,
        message: finding.message,
        remedy: finding.remedy?.text ?? '',
        confidence: finding.citation.confidence,
        fingerprint: finding.fingerprint,
        report: report.id,
      })
      expect(rows[i]?.margin === '' ? null : Number(rows[i]?.margin)).toBe(finding.margin)
    })
  })

  it('leaves a negative margin a number, which spreadsheets can sort', () => {
    // 5.8 mm is 0.3214 mm below the 0.241 in of the 2010 ADA Standards, Table 703.3.1.
    const csv = reportCsv(sampleReport(sampleSign(), [judgement()]))
    expect(Number(rowsOf(csv)[0]?.margin)).toBeCloseTo(-0.3214, 3)
    expect(csv).toMatch(/,-0\.32\d*,/)
  })

  it('begins with a byte order mark, ends each line with CR LF, and has as many fields in each (RFC 4180, 2)', () => {
    const csv = reportCsv(sampleReport())
    expect(csv.startsWith('\ufeff')).toBe(true)
    expect(csv.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
    expect(csv.endsWith('\r\n')).toBe(true)
  })

  it('carries commas, quotes and braille unchanged', () => {
    for (const mark of ['a, b', 'the "old" door', '⠓⠊⠇⠇', 'Tür 3']) expect(markOf(mark)).toBe(mark)
  })

  it('is the same for the same report', () => {
    expect(reportCsv(sampleReport())).toBe(reportCsv(sampleReport()))
  })
})

describe('a text that a spreadsheet would take for a formula', () => {
  /**
   * OWASP, CSV Injection (owasp.org/www-community/attacks/CSV_Injection): the characters at the start of a cell that begin
   * a formula, with the full-width ones, and the way round it through separators and quotes. Typed from memory.
   */
  const STARTS = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']

  it.each(STARTS)('is inert behind %j', (start) => {
    for (const text of [`${start}1+1`, `${start}=cmd|' /C calc'!A0`, `  ${start}1+1`, `${start}${start}1+1`])
      expect(markOf(text)).not.toMatch(/^\s*[=+\-@\t\r\n＝＋－＠]/)
  })

  it('is inert where it tries to open a cell of its own', () => {
    const csv = reportCsv(withMark('x","=1+1'))
    expect(rowsOf(csv)[0]?.mark).toBe('x","=1+1')
    // A spreadsheet that divides at semicolons, tabs or line ends, whatever the quotes say.
    const cells = reportCsv(withMark('x;=1+1\t@SUM(1)\n+2; -3')).split(/[;\t\r\n]/)
    for (const cell of cells) expect(cell).not.toMatch(/^[\s"]*[=+\-@]/)
  })

  it('is only that: an inner sign stays as it is', () => {
    expect(markOf('B-12 (a=b)')).toBe('B-12 (a=b)')
  })
})
