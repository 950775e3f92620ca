import { describe, expect, it } from 'vitest'
import { reportHtml } from '../../src/report/html.js'
import { reportJson } from '../../src/report/json.js'
import { numbered } from '../../src/report/numbering.js'
import { remedyFor } from '../../src/report/remedies.js'
import { Report } from '../../src/report/schema.js'
import { reportSvg } from '../../src/report/svg.js'
import { standardOfRequirement } from '../../src/standards/requirement-id.js'
import { judgement, observation, requirement, sampleReport, sampleSign } from './sample.js'
import { moonSpacing, severalReport } from './several.js'

/** One report for several standards. What it must hold is fixed by our own contract; the second standard is invented. */

describe('a report on several standards', () => {
  const report = severalReport()

  it('keeps to the schema, and to its order of keys', () => {
    expect(Report.parse(JSON.parse(reportJson(report).toString()))).toEqual(report)
    expect(reportJson(report).toString()).toBe(JSON.stringify(report))
  })

  it('gives each standard its verdict and its counts, which add up to those of all', () => {
    expect(report.standards.map(({ id, verdict }) => [id, verdict])).toEqual([
      ['us-ada-2010', 'fail'],
      ['moon-1', 'fail'],
    ])
    expect(report.standards[1]).toMatchObject({
      kind: 'guidance',
      supersededBy: 'moon-2',
      summary: { pass: 0, fail: 1, undetermined: 0, notApplicable: 0 },
    })
    const sum = (key: keyof Report['summary']) => report.standards.reduce((n, { summary }) => n + summary[key], 0)
    for (const key of ['pass', 'fail', 'undetermined', 'notApplicable'] as const)
      expect(sum(key)).toBe(report.summary[key])
  })

  it('may fail by one standard and pass by another', () => {
    const passing = severalReport([moonSpacing({ verdict: 'pass', decisive: [], margin: 0.2 }, 6.5)])
    expect(passing.standards.map(({ verdict }) => verdict)).toEqual(['fail', 'pass'])
    expect(passing.verdict).toBe('fail')
  })

  it('groups findings and their numbers by standard', () => {
    const groups = report.findings.map(({ requirement }) => standardOfRequirement(requirement))
    expect(groups).toEqual([...groups].sort((a, b) => (a === b ? 0 : a === 'us-ada-2010' ? -1 : 1)))
    const { failing } = numbered(report)
    expect(failing.map(({ finding }) => standardOfRequirement(finding.requirement)).at(-1)).toBe('moon-1')
    expect(failing.map(({ number }) => number)).toEqual(failing.map((_, i) => i + 1))
  })

  it('says of each standard what it is and how surely its rows are known', () => {
    const text = report.caveats.join('\n')
    expect(text).toContain('Signs on the Moon (moon-1) is guidance')
    expect(text).toContain('superseded by moon-2')
    expect(text).toMatch(/rows of moon-1 was read in a secondary source.*: moon-1\/1\/cell-spacing\./)
    expect(text).toContain('One matter of moon-1')
    expect(sampleReport().caveats.join('\n')).not.toMatch(/guidance|superseded|secondary/)
  })

  it('tells on the page which standard a clause was read for', () => {
    const note = 'Read on the Moon.'
    const noted = moonSpacing({
      requirement: requirement('moon-1/1/cell-spacing', { citation: { source: 'ADA', confidence: 'secondary', note } }),
    })
    const page = reportHtml(severalReport([noted]), '')
    expect(page).toContain(`moon-1 1: ${note}`)
    expect(page).toContain('<td>moon-1 1</td>')
    expect(reportHtml(sampleReport(), '')).not.toContain('<td>us-ada-2010 703')
  })

  it('has a section on the page for each standard, with its counts', () => {
    const page = reportHtml(report, reportSvg(report, sampleSign()))
    const [before, ada = '', moon = ''] = page.split(/<section id="standard-[^"]+"/)
    expect(before).toContain('The verdict for each standard')
    expect(ada).toContain('703.3.1/cell-spacing')
    expect(ada).not.toContain('moon-1/1/cell-spacing')
    expect(moon.slice(0, moon.indexOf('</section>'))).toContain('0 passed, 1 failed, 0 undecided, 0 not applicable')
    const alone = sampleReport()
    expect(reportHtml(alone, reportSvg(alone, sampleSign()))).not.toContain('id="standard-')
  })

  it('names the standard beside each clause on the drawing', () => {
    expect(reportSvg(report, sampleSign())).toContain('moon-1 1 Cell spacing')
    expect(reportSvg(sampleReport(), sampleSign())).not.toContain('us-ada-2010 703')
  })
})

describe('remedies for several standards', () => {
  it('aim at the middle of what they allow together, and say which do', () => {
    const [ada, moon] = [judgement(), moonSpacing()]
    expect(remedyFor(ada, [ada, moon])).toMatchObject({
      aim: 6.7,
      min: 6.3,
      max: 7,
      common: { min: 6.3, max: 7, standards: ['us-ada-2010', 'moon-1'] },
    })
    expect(remedyFor(moon, [ada, moon])?.aim).toBe(6.7)
    expect(remedyFor(ada, [ada])?.common).toBeNull()
  })

  it('say that one alone limits the quantity, where one does', () => {
    const [ada, moon] = [judgement(), moonSpacing({ verdict: 'not-applicable' })]
    expect(remedyFor(ada, [ada, moon])?.common).toEqual({ min: 6.1214, max: 7.62, standards: ['us-ada-2010'] })
  })

  it('name the rows that exclude each other, and no number', () => {
    const far = moonSpacing({ limit: { ...moonSpacing().limit, min: 8, max: 9, printed: '8 mm to 9 mm' } })
    expect(remedyFor(judgement(), [judgement(), far])).toMatchObject({
      aim: null,
      min: null,
      max: null,
      common: null,
      text: 'No cell spacing satisfies both us-ada-2010 703.3.1 (0.241 inch (6.1 mm) to 0.300 inch (7.6 mm)) and moon-1 1 (8 mm to 9 mm).',
    })
  })

  it('name the two of three that exclude each other', () => {
    const row = judgement({ limit: { ...judgement().limit, min: 6, max: undefined, other: undefined } })
    const [low, high] = [[undefined, 7] as const, [8, undefined] as const].map(([min, max], i) =>
      moonSpacing({
        requirement: requirement(`moon-${i}/1/cell-spacing`),
        limit: { ...moonSpacing().limit, min, max, printed: `row ${i}` },
      }),
    )
    expect(remedyFor(row, [row, low, high])?.text).toBe(
      'No cell spacing satisfies both moon-0 1 (row 0) and moon-1 1 (row 1).',
    )
  })

  it('change a kind to one that passes everywhere', () => {
    const finish = (name: string, pass: string[]) =>
      judgement({
        requirement: requirement(name, { quantity: 'visual.finish' }),
        limit: { kind: 'one-of', pass, unit: 'kind', printed: name, clause: '1' },
        decisive: [observation('glossy')],
      })
    const [a, b, c] = [
      finish('a/1/finish', ['matte', 'eggshell']),
      finish('b/1/finish', ['eggshell']),
      finish('c/1/finish', ['satin']),
    ]
    expect(remedyFor(a, [a, b])?.expected).toBe('eggshell')
    expect(remedyFor(a, [a, c])).toMatchObject({ expected: null, aim: null })
    expect(remedyFor(a, [a, c])?.text).toContain('satisfies both a 1')
  })

  it('say that braille cannot be contracted and uncontracted', () => {
    const grade = (name: string, quantity: string) =>
      judgement({
        requirement: requirement(name, { quantity }),
        limit: { kind: 'yes', unit: 'truth', printed: quantity, clause: '1' },
        decisive: [observation(false)],
      })
    const [a, b] = [grade('a/1/x', 'braille.contracted'), grade('b/1/x', 'braille.uncontracted')]
    expect(remedyFor(a, [a, b])?.text).toContain('ask for opposite things')
  })
})

describe('remedies and the radius of the dome', () => {
  // Ranges of the Australian Braille Authority (brailleaustralia.org/?p=60); the heights that they leave are worked out in windows/dome.test.ts.
  const dot = (slug: string, quantity: string, value: number, min: number, max: number) => {
    const seen = [observation(value)]
    return judgement({
      requirement: requirement(`aba/1/${slug}`, { quantity: `braille.${quantity}` }),
      verdict: value < min || value > max ? 'fail' : 'pass',
      limit: { kind: 'length', min, max, unit: 'mm', printed: 'as printed', clause: '1' },
      decisive: seen,
      measurement: { quantity, unit: 'mm', method: '', observations: seen, gaps: [] },
      margin: 0,
    })
  }
  const base = (value: number) => dot('base', 'dotBaseDiameter', value, 1.5, 1.6)
  const height = (value: number) => dot('height', 'dotHeight', value, 0.6, 0.9)
  const radius = (value: number) => dot('radius', 'domeRadius', value, 0.76, 0.81)

  it('change the height to one that the base allows', () => {
    const rows = [base(1.6), height(0.6), radius(0.833)]
    const remedy = remedyFor(rows[2], rows)
    expect(remedy?.quantity).toBe('braille.dotHeight')
    expect([remedy?.min?.toFixed(3), remedy?.max]).toEqual(['0.683', 0.9])
    expect(remedy?.aim).toBe(0.8)
  })

  it('change the base where only a dome that overhangs it, or hardly any other, would have its radius', () => {
    // 0.635 mm: 0.025 inch, 2010 ADA Standards 703.3.1.
    const rows = [base(1.5), dot('height', 'dotHeight', 0.75, 0.635, 0.9), radius(0.75)]
    // d = 2 √(2rh − h²) = 1.520 mm for r = 0.76 at h = 0.75; at d = 1.5 the heights are 0.635 to 0.637 and 0.883 to 0.900 mm.
    const remedy = remedyFor(rows[2], rows)
    expect(remedy).toMatchObject({ quantity: 'braille.dotBaseDiameter', max: 1.6, aim: 1.56 })
    expect(remedy?.min?.toFixed(3)).toBe('1.520')
    const high = [base(1.5), height(0.75), radius(0.75)]
    expect(remedyFor(high[2], high)).toMatchObject({ quantity: 'braille.dotHeight', min: 0.6, aim: 0.62 })
    const low = [base(1.5), dot('height', 'dotHeight', 0.5, 0.635, 0.9), radius(0.8125)]
    expect(remedyFor(low[1], low)?.max?.toFixed(3)).toBe('0.637')
  })

  it('keep the radius when the height or the base is what fails', () => {
    const low = [base(1.6), height(0.5), radius(0.89)]
    expect(remedyFor(low[1], low)?.min?.toFixed(3)).toBe('0.683')
    const wide = [base(1.7), height(0.7), radius(0.866)]
    // d = 2 √(2rh − h²): 1.515 mm for r = 0.76, 1.605 mm for r = 0.81, at h = 0.7.
    expect(remedyFor(wide[0], wide)).toMatchObject({ max: 1.6 })
    expect(remedyFor(wide[0], wide)?.min?.toFixed(3)).toBe('1.515')
  })

  it('tie nothing to a size that fails itself', () => {
    const rows = [base(1.7), height(0.5), radius(0.97)]
    expect(remedyFor(rows[0], rows)).toMatchObject({ min: 1.5, max: 1.6, aim: 1.55 })
    expect(remedyFor(rows[2], rows)).toMatchObject({ quantity: 'braille.domeRadius', min: 0.76, max: 0.81 })
  })
})
