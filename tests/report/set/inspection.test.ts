import { describe, expect, it } from 'vitest'
import type { Finding } from '../../../src/report/finding-schema.js'
import type { SetSign } from '../../../src/report/set/evidence.js'
import { inspectionOf, itemsOf } from '../../../src/report/set/inspection.js'
import { judgedBoxes, limitWords } from '../../../src/report/set/inspection-words.js'
import { sampleSet, setSign, unchecked } from './evidence-sample.js'

/** All values are invented; the printed limits are those of tests/report/sample.ts or of the clause named. */

const placed = (mark: string, location: string | null, door: string | null = null): SetSign =>
  setSign(mark, { location, door })

/** The sign with its findings changed. */
function changed(change: (finding: Finding) => Finding): SetSign {
  const sign = setSign('L-17')
  if (!sign.report) throw new Error('the sample has a report')
  return { ...sign, report: { ...sign.report, findings: sign.report.findings.map(change) } }
}

const only = (slug: string, changes: Partial<Finding>): SetSign =>
  changed((finding) => (finding.requirement.endsWith(slug) ? { ...finding, ...changes } : finding))

describe('the walk through a building', () => {
  it('goes from place to place in natural order, and from mark to mark', () => {
    const { places } = inspectionOf([
      placed('S-2', 'Room 10'),
      placed('S-10', 'Room 2'),
      placed('S-9', 'Room 2'),
      placed('S-1', null),
      placed('S-3', null, '7'),
    ])
    const walk = places.map(({ name, signs }) => [name, signs.map(({ sign }) => sign.mark)])
    expect(walk).toEqual([
      ['Door 7', ['S-3']],
      ['Room 2', ['S-9', 'S-10']],
      ['Room 10', ['S-2']],
      [null, ['S-1']],
    ])
  })

  it('does not lose a sign: each is on the sheet, has nothing left, or has no report', () => {
    const nothing = changed((finding) => ({ ...finding, verdict: 'pass' }))
    const { places, nothingLeft, unknown } = inspectionOf([
      setSign('A'),
      { ...nothing, mark: 'B' },
      unchecked('C', null),
    ])
    expect(places.flatMap(({ signs }) => signs.map(({ sign }) => sign.mark))).toEqual(['A'])
    expect(nothingLeft).toEqual(['B'])
    expect(unknown).toEqual(['C'])
  })
})

describe('what a person decides of a sign', () => {
  it('is what is undecided on the site first, then on the product', () => {
    const items = itemsOf(setSign('L-17'))
    expect(items.map(({ stage, title }) => `${stage}: ${title}`)).toEqual([
      'site: Lowest baseline',
      'site: Highest baseline',
      'product: Relief',
      'product: Dot height',
    ])
  })

  it('leaves out advice, and takes a judgement about the product', () => {
    const advice = only('relief', { force: 'advice' })
    expect(itemsOf(advice).map(({ title }) => title)).not.toContain('Relief')
    const judged = itemsOf(only('/finish', { verdict: 'undetermined', reason: 'needs-judgement' }))
    const finish = judged.find(({ title }) => title === 'Finish')
    expect(finish?.reading).toBeNull()
    expect(finish?.how).toBe('Judge whether this holds: Characters and background have a non-glare finish.')
  })

  it('has room for several readings of the height of dots, in the unit that the code prints first', () => {
    const [lowest, , relief, dots] = itemsOf(setSign('L-17'))
    expect(lowest?.reading).toEqual({ unit: 'in', count: 1 })
    expect(relief?.reading).toEqual({ unit: 'in', count: 3 })
    expect(dots?.reading).toEqual({ unit: 'in', count: 5 })
    const metric = only('dot-height', {
      limit: { min: 0.6, max: 0.9, allowed: null, unit: 'mm', printed: '0.6 mm to 0.9 mm' },
    })
    expect(itemsOf(metric).at(-1)?.reading?.unit).toBe('mm')
    const share = only('dot-height', {
      limit: { min: 0.1, max: null, allowed: null, unit: 'ratio', printed: '10 percent minimum' },
    })
    expect(itemsOf(share).at(-1)?.reading?.unit).toBe('%')
  })

  it('reads once what several clauses ask of one quantity', () => {
    const same = only('lowest-baseline', { quantity: 'installation.highestBaseline' })
    const [first] = itemsOf(same)
    expect(first?.limits.map(({ clause }) => clause)).toEqual(['703.4.1', '703.4.1'])
    expect(first && judgedBoxes(first).map((boxes) => boxes.replace(/\s+/g, ' '))).toEqual([
      '(a) ☐ yes ☐ no',
      '(b) ☐ yes ☐ no',
    ])
    expect(first && limitWords(first, 1)).toMatch(/^\(b\)\s703\.4\.1: /)
  })

  it('marks what is waived, and not what was waived until yesterday', () => {
    const [sign] = sampleSet().signs
    if (!sign) throw new Error('the sample has a sign')
    const dots = itemsOf(sign).find(({ title }) => title === 'Dot height')
    expect(dots?.limits[0]?.waived).toMatch(/^Measured by the inspector\./)
    const expired = { ...sign, waivers: sign.waivers.map((one) => ({ ...one, standing: 'expired' as const })) }
    expect(itemsOf(expired).flatMap(({ limits }) => limits.map(({ waived }) => waived))).toEqual([
      null,
      null,
      null,
      null,
    ])
  })
})
