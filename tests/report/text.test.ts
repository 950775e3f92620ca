import { describe, expect, it } from 'vitest'
import { reportText } from '../../src/report/text.js'
import { judgement, sampleReport, sampleSign } from './sample.js'

describe('the report for a terminal', () => {
  it('keeps to eighty columns', () => {
    const long = sampleReport(sampleSign({ mark: 'A mark that goes on and on '.repeat(8) }))
    for (const line of reportText(long).split('\n')) expect([...line].length).toBeLessThanOrEqual(80)
  })

  it('gives the verdict, each failing clause with its remedy, and what is undecided', () => {
    const text = reportText(sampleReport())
    expect(text).toMatch(/^L-17: FAILS\n/)
    expect(text).toContain('2. 703.3.1 Cell spacing: FAILS')
    expect(text).toContain('change    Set the cell spacing to 6.9 mm')
    expect(text).toContain('6. 703.3.1 Dot height: not given')
  })

  it('has nothing but the verdict for a sign that passes', () => {
    const text = reportText(sampleReport(sampleSign(), [judgement({ verdict: 'pass', margin: 0.5 }, 6.9)]))
    expect(text).toContain('PASSES')
    expect(text).not.toMatch(/FAILS|Undecided/)
  })

  it('lets no control character through to the terminal', () => {
    const text = reportText(sampleReport(sampleSign({ mark: 'a\u001b[31mred\u0007' })))
    expect(text).not.toMatch(/\p{Cc}(?<!\n)/u)
  })
})
