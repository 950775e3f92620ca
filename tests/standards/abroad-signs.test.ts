import { describe, expect, test } from 'vitest'
import { check } from '../../src/check.js'
import type { Report } from '../../src/report/schema.js'
import { SignDescription } from '../../src/sign/description.js'
import { translator, withValues } from '../measure/signs.js'
import { ABROAD } from './abroad-signs.js'
import { MET } from './met-signs.js'

/** Each table end to end: a sign that meets it, and signs that break a row of it. */

function reportOf(id: string, description: Record<string, unknown>): Report {
  const sign = SignDescription.parse(description)
  const options = { use: sign.use, decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const
  return check({ standards: [id], sign, options }, translator)
}

const rows = (report: Report, id: string, verdict: Report['findings'][number]['verdict']): string[] =>
  report.findings.filter((f) => f.verdict === verdict).map((f) => f.requirement.replace(`${id}/`, ''))

describe.each(Object.entries({ ...ABROAD, ...MET }))('the table %s', (id, { sign, open, fails }) => {
  const report = reportOf(id, sign)

  test('is met by a sign, but for what a person must judge', () => {
    expect(rows(report, id, 'fail')).toEqual([])
    expect(rows(report, id, 'undetermined').sort()).toEqual([...open].sort())
    expect(rows(report, id, 'pass').length).toBeGreaterThan(0)
    for (const { verdict, reason } of report.findings)
      if (verdict === 'undetermined') expect(reason).toBe('needs-judgement')
  })

  test('gives that sign a verdict that says no more than that', () => {
    const binding = report.findings.filter(({ force }) => force === 'shall').map(({ verdict }) => verdict)
    const applies = binding.some((verdict) => verdict !== 'not-applicable')
    const open = binding.includes('undetermined')
    expect(report.verdict).toBe(open ? 'undetermined' : applies ? 'pass' : 'not-applicable')
  })

  test.each(fails)('$row is broken', ({ row, values }) => {
    expect(rows(report, id, 'fail')).not.toContain(row)
    const broken = reportOf(id, withValues(sign, values))
    expect(rows(broken, id, 'fail')).toContain(row)
    const isBinding = broken.findings.some((f) => f.requirement === `${id}/${row}` && f.force === 'shall')
    if (isBinding) expect(broken.verdict).toBe('fail')
  })
})

test.each([
  ['es-tma-851-2021', '41.2.b/character-height'],
  ['ch-vaboev', '5.4/character-height'],
])('%s: %s asks for the distance, and takes none for granted', (id, row) => {
  const sign = ABROAD[id]?.sign ?? {}
  const { findings, questions } = reportOf(id, withValues(sign, { 'installation.viewingDistance': undefined }))
  const requirement = `${id}/${row}`
  const finding = findings.find((one) => one.requirement === requirement)
  expect(finding).toMatchObject({ verdict: 'undetermined', reason: 'missing-fact' })
  expect(finding?.message).not.toContain('first distance row')
  const asked = questions.find(({ pointer }) => pointer === '/sign/installation/viewingDistance')
  expect(asked?.decides).toContain(requirement)
})

describe('the reserve of DIN 32975 for contrast that follows from colours', () => {
  // K of #6e6e6e on white lies between 0.7, which is printed, and 0.8, which holds 0.1 in reserve
  const sign = withValues(ABROAD['de-din-32975']?.sign ?? {}, { 'lettering.0.colour': '#6e6e6e' })
  const verdictWith = (measured: Record<string, unknown>[]) =>
    reportOf('de-din-32975', { ...sign, measured }).findings.find(({ clause }) => clause === 'signs')?.verdict

  test('is kept back without a measurement, and where something else was measured', () => {
    expect(verdictWith([])).toBe('fail')
    expect(verdictWith([{ quantity: 'contrast.lighterReflectance', values: [0.9] }])).toBe('fail')
  })

  test('is not kept back from a measured luminance contrast', () =>
    expect(verdictWith([{ quantity: 'contrast.charactersByMichelson', values: [0.72], unit: 'ratio' }])).toBe('pass'))
})
