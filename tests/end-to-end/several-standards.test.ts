import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { check } from '../../src/check.js'
import { SignDescription } from '../../src/sign/description.js'
import { standardOfRequirement } from '../../src/standards/requirement-id.js'
import { PUMP_ROOM, translator, withValues } from '../measure/signs.js'

/**
 * One drawing held against several standards. The drawing is our own, with dots of a cell 2.7 mm apart. Figures: 2010 ADA Standards, table
 * 703.3.1: 0.090 to 0.100 in; Australian Braille Authority, specifications for braille on signage, and the Korean notice of 10 September
 * 2020 as the press reports it: 2.3 to 2.5 mm; DIN 32976:2007-08 as the German association of the blind reports it: 2.7 mm.
 */

const drawing = readFileSync(new URL('../drawings/svg/hand-x-pitch27-plain.svg', import.meta.url))
const options = { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' } as const

const reportOn = (...standards: string[]) => check({ drawing, standards, options }, translator)
const spacing = (report: ReturnType<typeof reportOn>, standard: string) =>
  report.findings.find(
    ({ requirement, quantity }) => quantity === 'braille.dotSpacing' && standardOfRequirement(requirement) === standard,
  )

describe('a drawing held against three standards', () => {
  const standards = ['us-ada-2010', 'au-aba', 'kr-2020']
  const report = reportOn(...standards)

  test('gets one report, with the findings of one standard after those of another', () => {
    const order = [...new Set(report.findings.map(({ requirement }) => standardOfRequirement(requirement)))]
    expect(order).toEqual(standards)
    const runs = report.findings.filter(
      ({ requirement }, i, all) =>
        standardOfRequirement(requirement) !== standardOfRequirement(all[i - 1]?.requirement ?? '/'),
    )
    expect(runs).toHaveLength(standards.length)
    expect(report.standards.map(({ id, verdict }) => [id, verdict])).toEqual(standards.map((id) => [id, 'fail']))
  })

  test('is told for each what to change to, in the middle of what all three allow', () => {
    for (const id of standards)
      expect(spacing(report, id)?.remedy).toMatchObject({ aim: 2.4, common: { min: 2.3, max: 2.5, standards } })
  })

  test('is told which rows were read second-hand', () => {
    const caveat = report.caveats.find((text) => text.includes('rows of kr-2020') && text.includes('secondary source'))
    const used = report.findings.filter(
      ({ requirement, verdict, citation }) =>
        requirement.startsWith('kr-2020/') && verdict !== 'not-applicable' && citation.confidence === 'secondary',
    )
    expect(used.length).toBeGreaterThan(0)
    for (const { requirement } of used) expect(caveat).toContain(requirement)
  })
})

test('standards that exclude each other get no number, but the names of their rows', () => {
  const report = reportOn('us-ada-2010', 'de-din-32976')
  const remedy = spacing(report, 'us-ada-2010')?.remedy
  expect(remedy).toMatchObject({ aim: null, min: null, max: null, common: null })
  expect(remedy?.text).toMatch(/^No dot spacing satisfies both us-ada-2010 703\.3\.1 .* and de-din-32976 /)
})

test('the order in which standards are asked is the order of the report, and changes no verdict', () => {
  const [one, other] = [reportOn('us-ada-2010', 'kr-2020'), reportOn('kr-2020', 'us-ada-2010')]
  const verdicts = ({ findings }: typeof one) =>
    findings.map(({ requirement, verdict }) => `${requirement} ${verdict}`).sort()
  expect(verdicts(one)).toEqual(verdicts(other))
  expect(other.standards.map(({ id }) => id)).toEqual(['kr-2020', 'us-ada-2010'])
})

test('a size with a name is advice: it changes no verdict and narrows no remedy', () => {
  const [alone, beside] = [reportOn('us-ada-2010'), reportOn('us-ada-2010', 'nls-800')]
  expect(beside.verdict).toBe(alone.verdict)
  expect(beside.standards[1]).toMatchObject({ id: 'nls-800', kind: 'reference-geometry', verdict: 'not-applicable' })
  expect(spacing(beside, 'us-ada-2010')?.remedy).toMatchObject({ min: spacing(alone, 'us-ada-2010')?.remedy?.min })
})

describe('a remedy that is followed', () => {
  const standards = ['us-ada-2010', 'au-aba', 'kr-2020']
  const DOT = ['braille.dotBaseDiameter', 'braille.dotHeight', 'braille.domeRadius']

  /** Verdicts and remedies of the rows on the shape of a dot; the sizes are invented. */
  function dot(dotBaseDiameter: number, dotHeight: number) {
    const values = { 'braille.0.dotBaseDiameter': dotBaseDiameter, 'braille.0.dotHeight': dotHeight }
    const sign = SignDescription.parse(withValues(PUMP_ROOM, values))
    const { findings } = check({ sign, standards, options }, translator)
    const rows = findings.filter(({ quantity }) => DOT.includes(quantity))
    return { failing: rows.filter(({ verdict }) => verdict === 'fail'), judged: rows.map(({ verdict }) => verdict) }
  }

  test.each([
    ['too low on the widest base', 1.6, 0.6],
    ['too low on the narrowest base', 1.5, 0.6],
    ['too round on the narrowest base', 1.5, 0.75],
    ['too wide', 1.75, 0.8],
    ['too wide and too low', 1.75, 0.5],
  ])('mends a dot that is %s, by every standard', (_, base, height) => {
    let size = { 'braille.dotBaseDiameter': base, 'braille.dotHeight': height }
    const { failing } = dot(base, height)
    expect(failing.length).toBeGreaterThan(0)
    for (const { remedy } of failing)
      if (remedy && remedy.aim !== null) size = { ...size, [remedy.quantity]: remedy.aim }
    const mended = dot(size['braille.dotBaseDiameter'], size['braille.dotHeight'])
    expect(mended.failing.map(({ message }) => message)).toEqual([])
    expect(new Set(mended.judged)).toEqual(new Set(['pass']))
  })
})

// What changed is in the table's own log: GET /v1/standards/us-ada-2010/changes.
test('a check pinned to an earlier revision is answered by it', () => {
  const values = { 'installation.side': 'nearest-adjacent-wall', 'installation.door.wallAtLatch': true }
  const sign = SignDescription.parse(withValues(PUMP_ROOM, values))
  const side = (standard: string) => {
    const { standards, findings } = check({ sign, standards: [standard], options }, translator)
    const finding = findings.find(({ requirement }) => requirement.endsWith('703.4.2/side'))
    return [standards[0]?.revision, finding?.verdict, finding?.reason]
  }
  expect(side('us-ada-2010@1')).toEqual([1, 'undetermined', 'needs-judgement'])
  expect(side('us-ada-2010@2')).toEqual([2, 'fail', null])
})
