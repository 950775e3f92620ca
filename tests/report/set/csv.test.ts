import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { setCsv } from '../../../src/report/set/csv.js'
import { scheduleCsv } from '../../../src/report/set/schedule-csv.js'
import { REQUIREMENTS, sampleSet, wordedSet } from './evidence-sample.js'
import { naughty } from './naughty.js'

/** Read back by csv-parse, which we did not write. RFC 4180. */
const rowsOf = (csv: string): Record<string, string>[] =>
  parse(csv, { bom: true, columns: true, record_delimiter: '\r\n' })

const rowOf = (rows: Record<string, string>[], mark: string, requirement: string) =>
  rows.find((row) => row.mark === mark && row.requirement === requirement)

describe('all findings of a set as CSV', () => {
  it('has one row a finding of every sign, with what the report says, and where the sign stands', () => {
    const set = sampleSet()
    const rows = rowsOf(setCsv(set))
    const reports = set.signs.flatMap(({ report }) => report ?? [])
    expect(rows.filter(({ requirement }) => requirement !== '')).toHaveLength(reports.flatMap((r) => r.findings).length)
    const finding = reports[1]?.findings.find(({ requirement }) => requirement === REQUIREMENTS.lapsed)
    expect(rowOf(rows, 'L-18', REQUIREMENTS.lapsed)).toMatchObject({
      ...{ sign: 'sgn_L-18', location: 'Loft 17', door: 'D-17', verdict: 'fail', report: reports[1]?.id },
      ...{ message: finding?.message, limit: finding?.limit.printed, waiver: '' },
    })
    expect(Number(rowOf(rows, 'L-18', REQUIREMENTS.lapsed)?.margin)).toBe(finding?.margin)
  })

  it('lays a waiver beside the finding, whose verdict stays', () => {
    const rows = rowsOf(setCsv(sampleSet()))
    expect(rowOf(rows, 'L-17', REQUIREMENTS.waived)).toMatchObject({
      ...{ verdict: 'fail', waiver: 'in-force', waiver_reason: 'The wall is listed; the old stroke may stay' },
      ...{ waiver_authority: 'Letter 44', waiver_author: 'R. Ortega', waiver_at: '2026-03-02T09:30:00.000Z' },
    })
    expect(rowOf(rows, 'L-17', REQUIREMENTS.lapsed)).toMatchObject({ waiver: 'expired', waiver_expires: '2026-03-02' })
  })

  it('has a row for a sign without a report, which says why', () => {
    const rows = rowsOf(setCsv(sampleSet())).filter(({ requirement }) => requirement === '')
    expect(rows.map(({ mark, verdict, problem }) => [mark, verdict, problem])).toEqual([
      ['L-19', '', 'The drawing cannot be read. Line 3, column 7: a tag is not closed.'],
      ['L-20', '', 'This sign has not been checked yet.'],
    ])
  })
})

describe('the schedule with verdicts', () => {
  it('has one row a sign, with the verdict, that of each standard, and counts that a waiver does not lessen', () => {
    const set = sampleSet()
    const rows = rowsOf(scheduleCsv(set))
    expect(rows.map(({ mark }) => mark)).toEqual(set.signs.map(({ mark }) => mark))
    expect(rows[0]).toMatchObject({
      ...{
        verdict: 'fail',
        'us-ada-2010': 'fail',
        failing: '3',
        failing_waived: '1',
        waived_clauses: REQUIREMENTS.waived,
      },
      ...{ undetermined: '4', undetermined_waived: '1', product: 'fail', files: 'schedule.csv, set.zip/L-17.svg' },
    })
    expect(rows[1]).toMatchObject({ verdict: 'fail', failing: '3', failing_waived: '0', undetermined: '4' })
    expect(rows[1]?.failing_clauses).toBe([REQUIREMENTS.waived, REQUIREMENTS.lapsed, REQUIREMENTS.failing].join(' '))
    expect(rows[2]).toMatchObject({ verdict: '', failing: '', 'us-ada-2010': '' })
    expect(rows[2]?.problem).toContain('a tag is not closed')
  })
})

describe.each([
  ['findings', setCsv],
  ['schedule', scheduleCsv],
] as const)('words of a client in the %s', (_, write) => {
  /** OWASP, CSV Injection (owasp.org/www-community/attacks/CSV_Injection), with the full-width forms. Typed from memory. */
  const STARTS = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']

  it.each(STARTS)('begin no formula behind %j', (start) => {
    for (const words of [`${start}1+1`, `  ${start}cmd|' /C calc'!A0`, `"${start}1`, `x;${start}1+1`, `x","${start}1`])
      for (const row of rowsOf(write(wordedSet(words))))
        for (const [column, cell] of Object.entries(row))
          if (!/^(measured|limit|margin)/.test(column))
            for (const part of cell.split(';')) expect(part, column).not.toMatch(/^\s*[=+\-@\t\r\n＝＋－＠]/)
  })

  it('change neither the number of rows nor of cells, however naughty', () => {
    const size = rowsOf(write(wordedSet('L-17'))).length
    for (const words of naughty()) {
      const rows = rowsOf(write(wordedSet(words)))
      expect(rows.length, JSON.stringify(words)).toBe(size)
    }
  })
})
