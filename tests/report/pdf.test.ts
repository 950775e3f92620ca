import { describe, expect, it } from 'vitest'
import { reportPdf } from '../../src/report/pdf.js'
import { reportSvg } from '../../src/report/svg.js'
import { elementsOf, openPdf, textOf } from './read-pdf.js'
import { judgement, sampleReport, sampleSign } from './sample.js'
import { severalReport } from './several.js'

const read = async (report = sampleReport(), sign = sampleSign()) => {
  const file = await openPdf(reportPdf(report, reportSvg(report, sign)))
  return { file, elements: await elementsOf(file) }
}

describe('the report as PDF', () => {
  it('says its language and its title, and that it is tagged', async () => {
    const { file } = await read()
    const info = (await file.getMetadata()).info as Partial<Record<string, string>>
    expect(info).toMatchObject({ Language: 'en', Title: 'L-17: Fails' })
    expect(info.CreationDate).toBeUndefined()
    expect((await file.getMarkInfo())?.Marked).toBe(true)
  })

  it('has one first heading, and no heading that skips a level', async () => {
    const { elements } = await read()
    const levels = elements.flatMap(({ role }) => (/^H[1-6]$/.test(role) ? [Number(role[1])] : []))
    expect(levels.filter((level) => level === 1)).toHaveLength(1)
    levels.slice(1).forEach((level, i) => expect(level - (levels[i] ?? 0)).toBeLessThanOrEqual(1))
  })

  it('reads the verdict first, then what is wrong, what is undecided and the form', async () => {
    const { elements, file } = await read()
    const heads = elements.filter(({ role }) => role === 'H2').map(({ text }) => text)
    expect(heads.slice(0, 5)).toEqual([
      'Verdict',
      'The sign with its numbers',
      'What is wrong',
      'What is undecided',
      'To be measured',
    ])
    expect((await file.getOutline()).map(({ title }) => title)).toEqual(['L-17', ...heads])
  })

  it('says of each failure what was found, what is allowed, by how much and what to change', async () => {
    const report = sampleReport()
    const { elements } = await read(report)
    const text = textOf(elements).replace(/\s+/g, ' ')
    for (const { message, limit, remedy, verdict } of report.findings) {
      if (verdict !== 'fail') continue
      for (const words of [message, limit.printed, remedy?.text ?? '']) expect(text).toContain(words)
    }
    for (const caveat of report.caveats) expect(text).toContain(caveat)
  })

  it('gives the drawing a text that names each failing finding', async () => {
    const { elements } = await read()
    const [figure, ...others] = elements.filter(({ role }) => role === 'Figure')
    expect(others).toEqual([])
    expect(figure?.alt).toContain('703.3.1 Cell spacing')
    // The marks of the drawing: failures 1 and 4 share a frame in tests/report/sample.ts.
    expect(figure?.text).toContain('1, 4')
  })

  it('gives each table head cells, and a form row to each thing to be measured', async () => {
    const report = sampleReport()
    const { elements } = await read(report)
    const heads = elements.filter(({ role }) => role === 'TH').map(({ text }) => text)
    for (const head of ['Stage', 'Standard', 'Found', 'How to measure it']) expect(heads).toContain(head)
    expect(report.toMeasure.length).toBeGreaterThan(0)
    for (const { clause, title } of report.toMeasure) expect(heads).toContain(`${clause} ${title}`)
  })

  it('shows braille, and the number of a character that no face has', async () => {
    const { elements } = await read()
    expect(textOf(elements)).toContain('⠓⠊⠇⠇')
    const { elements: chinese } = await read(sampleReport(sampleSign({ mark: '中' })))
    expect(textOf(chinese)).toContain('[U+4E2D]')
  })

  it('loses no word of a long text of a client at the end of a sheet', async () => {
    const mark = Array.from({ length: 3000 }, (_, i) => `word${i}`).join(' ')
    const { elements } = await read(sampleReport(sampleSign({ mark })))
    const text = textOf(elements).replace(/\s+/g, ' ')
    for (const i of [0, 700, 1500, 2999]) expect(text).toContain(`word${i}`)
  })

  it('says each of several standards, and says so when nothing fails', async () => {
    const several = severalReport()
    const { elements } = await read(several)
    for (const { title } of several.standards) expect(textOf(elements)).toContain(title)
    // Two standards may number their clauses alike.
    const heads = elements.filter(({ role }) => role === 'H3').map(({ text }) => text)
    for (const { requirement, clause, verdict } of several.findings)
      if (verdict === 'fail') expect(heads.join('\n')).toContain(`. ${requirement.split('/')[0]} ${clause} `)
    const passing = sampleReport(sampleSign(), [judgement({ verdict: 'pass', margin: 0.7 }, 6.9)])
    expect(textOf((await read(passing)).elements)).toContain('Nothing that was looked at fails.')
  })

  it('is the same for the same report', () => {
    const once = () => reportPdf(sampleReport(), reportSvg(sampleReport(), sampleSign()))
    expect(once().equals(once())).toBe(true)
  })
})
