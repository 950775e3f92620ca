import { describe, expect, it } from 'vitest'
import { decode } from '../../../src/drawing/decode.js'
import { readDrawing } from '../../../src/drawing/read.js'
import { boxesOf, bytesOf, checkedAgainst, corrected, differences, failedRows, fileOf, isWithin } from './corrected.js'

/**
 * Drawings of invented places, written by drawing programs and by hand, each with one violation by design (the clause was noted by the
 * program that designed the sign, not by this service). After the correction the clause is kept, and resvg, another reader of SVG, paints
 * the same picture everywhere but where braille, or the letters that had to move, were and are.
 */
const DRAWINGS: [name: string, clause: string, moved: ('braille' | 'lettering')[]][] = [
  ['batik-x-pitch27-arc-attr', '703.3.1/dot-spacing', ['braille']],
  ['dvisvgm-eps-x-border5', '703.3.2/border-clearance', ['braille', 'lettering']],
  ['hand-edge-max-plain', '703.3.1/line-spacing', ['braille']],
  ['hand-edge-min-plain', '703.3.1/line-spacing', ['braille']],
  ['hand-x-dot12-plain', '703.3.1/dot-base-diameter', ['braille']],
  ['hand-x-grade1-plain', '703.3/contracted', ['braille']],
  ['hand-x-leading120-plain', '703.2.8/line-spacing', ['lettering']],
  ['hand-x-mismatch-plain', '703.2/wording', ['braille']],
  ['hand-x-par-meet-scaled', '703.3.1/dot-spacing', ['braille']],
  ['hand-x-pitch27-plain', '703.3.1/dot-spacing', ['braille']],
  ['inkscape-x-missingdot-combined', '703.2/wording', ['braille']],
  ['libreoffice-x-leading120-circle-path', '703.2.8/line-spacing', ['lettering']],
  ['matplotlib-x-displaced-scatter-path', '703.3.1/dot-spacing', ['braille']],
  ['matplotlib-x-tight-plot-path', '703.2.7/character-spacing-min', ['lettering']],
  ['mutool-x-line95-cairo-line95-path', '703.3.1/line-spacing', ['braille']],
  ['openscad-x-displaced-hole', '703.3.1/dot-spacing', ['braille']],
]

describe.each(DRAWINGS)('%s', (name, clause, moved) => {
  const bytes = fileOf(name)
  const requirement = `us-ada-2010/${clause}`
  const before = checkedAgainst(bytes)
  const { drawing, changes, notCorrected, report, checks } = corrected(bytes)

  it('fails on the clause by design, and not any more', () => {
    expect(failedRows(before)).toContain(requirement)
    expect(failedRows(report)).toEqual([])
    expect(changes.map((change) => change.requirement)).toContain(requirement)
    expect(notCorrected).toEqual([])
  })

  it('breaks nothing that passed', () => {
    const passed = before.findings.filter(({ verdict }) => verdict === 'pass').map((finding) => finding.requirement)
    const now = new Map(report.findings.map((finding) => [finding.requirement, finding.verdict]))
    expect(passed.filter((row) => now.get(row) !== 'pass')).toEqual([])
  })

  it('is reported as a check of the very drawing reports it', () => {
    expect(checkedAgainst(bytesOf(drawing)).findings).toEqual(report.findings)
  })

  it('looks the same to resvg but where it was changed', () => {
    const { viewport } = readDrawing(bytes)
    const boxes = moved.flatMap((what) => [...boxesOf(before, what), ...boxesOf(report, what)])
    const found = differences(decode(bytes), drawing, viewport.width)
    expect(found.length).toBeGreaterThan(0)
    expect(found.filter((pixel) => !isWithin(pixel, boxes))).toEqual([])
  })

  it('takes few checks', () => expect(checks).toBeLessThanOrEqual(4))
})

/**
 * Braille of another code on drawings of other constructions: turned, cut by a clip, as markers, as ends of strokes, as copies of one
 * dot. Signs in Australia have uncontracted braille, flush left with its text (NCC 2022, S15C6, as read).
 */
describe.each([
  'hand-rot90',
  'hand-rot180',
  'hand-dot-clip',
  'hand-dot-marker-stroke',
  'hand-dot-zero-path',
  'hand-percent-coords',
  'inkscape-garden-orchid-plain-layers',
])('%s for another country', (name) => {
  const bytes = fileOf(name)
  const standards = ['au-aba', 'au-ncc-2022']
  const before = checkedAgainst(bytes, standards)
  const { drawing, report } = corrected(bytes, standards)

  it('gets braille that says its text in that code', () => {
    const braille = (rows: string[]) => rows.filter((row) => /S15C6|subject/.test(row))
    expect(braille(failedRows(before)).length).toBeGreaterThan(0)
    expect(braille(failedRows(report))).toEqual([])
  })

  it('looks the same to resvg everywhere else', () => {
    const boxes = [...boxesOf(before, 'braille'), ...boxesOf(report, 'braille')]
    const found = differences(decode(bytes), drawing, readDrawing(bytes).viewport.width)
    expect(found.length).toBeGreaterThan(0)
    expect(found.filter((pixel) => !isWithin(pixel, boxes))).toEqual([])
  })
})

describe('colours', () => {
  it.each(['hand-x-lowcontrast-plain', 'hand-x-lowcontrast-hex8'])(
    '%s gets letters that are as dark as they must be',
    (name) => {
      const { drawing, changes, report } = corrected(fileOf(name))
      expect(failedRows(report)).toEqual([])
      expect(changes[0]?.to).toMatch(/^#[\da-f]{6} on #c3cbcc$/)
      // The contrast ratio of WCAG 2.2 is 3 at the very colour, and below it one step of eight bits lighter.
      const contrast = report.findings.find(({ requirement }) => requirement === 'us-ada-2010/703.5.1/contrast')
      expect(contrast?.measured?.value).toBeGreaterThanOrEqual(3)
      expect(contrast?.measured?.value).toBeLessThan(3.1)
      expect(drawing).toContain('fill="#c3cbcc')
    },
  )
})

describe('live text', () => {
  it('gets another colour where it is written', () => {
    const svg = decode(fileOf('hand-text-tspans'))
    const pale = svg.replace('<g fill="#f8f9fa"><text', '<g fill="#4a4a63"><text')
    const before = checkedAgainst(bytesOf(pale))
    expect(failedRows(before)).toEqual(['us-ada-2010/703.5.1/contrast'])
    const { drawing, report } = corrected(bytesOf(pale))
    expect(failedRows(report)).toEqual([])
    expect(drawing.replace(/ style="fill:#[\da-f]{6}"/g, '')).toBe(pale)
  })
})

describe('what needs a decision', () => {
  it.each([
    ['hand-x-cap12-plain', '703.2.5/character-height'],
    ['hand-x-stroke25-plain', '703.2.6/stroke-thickness'],
    ['hand-x-pict120-plain', '703.6.1/field-height'],
    ['hand-x-lower-live', '703.2.2/case'],
  ])('%s is left as it is, to the letter', (name, clause) => {
    const bytes = fileOf(name)
    const { drawing, changes, notCorrected } = corrected(bytes)
    expect(drawing).toBe(decode(bytes))
    expect(changes).toEqual([])
    expect(notCorrected.map(({ requirement }) => requirement)).toContain(`us-ada-2010/${clause}`)
    for (const { why } of notCorrected) expect(why).toMatch(/^[A-Z].+\.$/)
  })
})
