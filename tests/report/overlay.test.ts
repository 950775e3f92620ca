import { describe, expect, it } from 'vitest'
import { reportHtml } from '../../src/report/html.js'
import { idleWaivers, isWaived, timeWords, waiversFor, type Overlay } from '../../src/report/overlay.js'
import { reportPdf } from '../../src/report/pdf.js'
import { reportSvg } from '../../src/report/svg.js'
import { elementsOf, openPdf, textOf } from './read-pdf.js'
import { sampleReport, sampleSign } from './sample.js'
import { fingerprintOf, waiver } from './set/evidence-sample.js'

/** Waivers, notes and readings laid over one report. All values are invented. */

const report = sampleReport()
const drawing = reportSvg(report, sampleSign())
const stroke = fingerprintOf(report, 'us-ada-2010/703.2.6/stroke-thickness')
const relief = fingerprintOf(report, 'us-ada-2010/703.2.1/relief')
const overlay: Overlay = {
  waivers: [
    waiver({ fingerprint: stroke }),
    waiver({ fingerprint: relief, reason: 'Felt by the inspector' }),
    waiver({ fingerprint: relief, reason: 'Felt last year', standing: 'expired', expires: '2025-12-31' }),
    waiver({ fingerprint: 'gone', standing: 'unused' }),
  ],
  notes: [{ text: 'Hung on the wrong wall.', author: 'B. Clay', at: '2026-03-03T07:00:00.000Z' }],
  measurements: [
    {
      quantity: 'raised.relief',
      values: [0.9],
      unit: 'mm',
      expandedUncertainty: null,
      instrument: null,
      author: 'B. Clay',
      at: '2026-03-03T07:05:00.000Z',
    },
  ],
}

const words = (html: string): string => html.replace(/<[^>]*>/g, '').replace(/\s+/g, ' ')

describe('what is laid over a report', () => {
  const html = words(reportHtml(report, drawing, overlay))

  it('changes nothing that the report says', () => {
    const bare = words(reportHtml(report, drawing))
    expect(html).toContain('The sign fails 3 requirements. 4 requirements are undecided.')
    for (const { message } of report.findings.filter(({ verdict }) => verdict === 'fail')) {
      expect(bare).toContain(message)
      expect(html).toContain(message)
    }
    expect(bare).not.toContain('Waive')
  })

  it.each(['page', 'paper'])('is told on the %s', async (form) => {
    const text =
      form === 'page'
        ? html
        : textOf(await elementsOf(await openPdf(reportPdf(report, drawing, overlay)))).replace(/\s+/g, ' ')
    for (const told of [
      'The wall is listed; the old stroke may stay. Authority reference: Letter 44.',
      'Waived: Felt by the inspector.',
      'Waiver expired: Felt last year.',
      'Waiver not used: A finding that the latest report does not have (gone).',
      'Hung on the wrong wall. (B. Clay, 2026-03-03, 07:00 UTC)',
      '0.9 mm, instrument not named; entered by B. Clay, 2026-03-03, 07:05 UTC',
    ])
      expect(text).toContain(told)
  })
})

describe('the form to be filled in', () => {
  it('marks what is waived, which is still to be measured', async () => {
    const heads = (await elementsOf(await openPdf(reportPdf(report, drawing, overlay)))).filter(
      ({ role }) => role === 'TH',
    )
    expect(heads.map(({ text }) => text)).toContain('703.2.1 Relief (waived)')
    expect(heads.map(({ text }) => text)).toContain('703.3.1 Dot height')
  })
})

describe('the waivers of a finding', () => {
  it('are those in force and those expired; an unused one is shown elsewhere', () => {
    expect(waiversFor(overlay, { fingerprint: relief }).map(({ standing }) => standing)).toEqual([
      'in-force',
      'expired',
    ])
    expect(waiversFor(overlay, { fingerprint: 'gone' })).toEqual([])
    expect(idleWaivers(overlay).map(({ standing }) => standing)).toEqual(['expired', 'unused'])
  })

  it('let it stand only while one is in force', () => {
    expect(isWaived(overlay, { fingerprint: stroke })).toBe(true)
    const expired = { ...overlay, waivers: overlay.waivers.filter(({ standing }) => standing === 'expired') }
    expect(isWaived(expired, { fingerprint: relief })).toBe(false)
  })
})

describe('a time for people', () => {
  it('is the day and the minute in UTC, and nothing else is touched', () => {
    expect(timeWords('2026-03-03T07:05:59.123Z')).toBe('2026-03-03, 07:05 UTC')
    expect(timeWords('2026-03-03')).toBe('2026-03-03')
    expect(timeWords('<b>')).toBe('<b>')
  })
})
