import { describe, expect, it } from 'vitest'
import { createTranslator } from '../../../src/braille/engine.js'
import { examine, type CheckInput } from '../../../src/check.js'
import { decode } from '../../../src/drawing/decode.js'
import { readDrawing } from '../../../src/drawing/read.js'
import { correct } from '../../../src/make/correct/correct.js'
import type { Report } from '../../../src/report/schema.js'
import { boxesOf, bytesOf, checkedAgainst, corrected, differences, failedRows, fileOf, isWithin } from './corrected.js'

const translator = createTranslator()
const PITCH = '703.3.1/dot-spacing'
/** A drawing whose dots stand 2.7 mm apart, more than the 2.5 mm of 2010 ADA Standards, table 703.3.1; everything else is well. */
const WIDE = decode(fileOf('hand-x-pitch27-plain'))

/** The dots pass, and resvg paints nothing else otherwise. */
function expectCorrected(svg: string) {
  const bytes = bytesOf(svg)
  const before = checkedAgainst(bytes)
  expect(failedRows(before)).toEqual([`us-ada-2010/${PITCH}`])
  const { drawing, report } = corrected(bytes)
  expect(failedRows(report)).toEqual([])
  const boxes = [...boxesOf(before, 'braille'), ...boxesOf(report, 'braille')]
  const found = differences(svg, drawing, readDrawing(bytes).viewport.width)
  expect(found.filter((pixel) => !isWithin(pixel, boxes))).toEqual([])
  expect(found.length).toBeGreaterThan(0)
  return drawing
}

function expectLeft(svg: string, why: RegExp) {
  const { drawing, changes, notCorrected } = corrected(bytesOf(svg))
  expect(drawing).toBe(svg)
  expect(changes).toEqual([])
  expect(notCorrected).toEqual([{ requirement: `us-ada-2010/${PITCH}`, why: expect.stringMatching(why) as string }])
}

describe('the text of a drawing', () => {
  it('is the same but for the dots that go and one group that comes', () => {
    const drawing = expectCorrected(WIDE)
    const rest = drawing.replace(/<g data-part="braille"[^]*?<\/g>\n/, '')
    expect(rest).toBe(WIDE.replace(/<ellipse[^>]*>/g, ''))
  })

  it('keeps its outermost prefix', () => {
    const prefixed = WIDE.replace(/<(\/?)(?=[a-z])/g, '<$1s:').replace('xmlns=', 'xmlns:s=')
    expect(expectCorrected(prefixed)).toContain('<s:circle cx=')
  })

  it('may be scaled and shifted from the outside', () => {
    const half = WIDE.replace('viewBox="0 0 196 92"', 'viewBox="3 4 98 46"')
      .replace('<path id="panel"', '<g transform="translate(3 4) scale(0.5)"><path id="panel"')
      .replace('</svg>', '</g></svg>')
    // In user units of 2 mm the dots of 1.55 mm have a radius of 0.3875.
    expect(expectCorrected(half)).toContain('r="0.3875"')
  })

  it('is not changed where a style sheet would make more of it', () => {
    // Without its circles the group of the letters would be the last of its kind.
    expectLeft(
      WIDE.replace('<path id="panel"', '<style>#raised:not(:has(~ g ellipse)){fill:#c00}</style><path id="panel"'),
      /change other things|would break|decision/,
    )
  })

  it('paints dots in their colour whatever a style sheet says of circles', () => {
    expectCorrected(WIDE.replace('<path id="panel"', '<style>circle{fill:#1b263b;stroke:none}</style><path id="panel"'))
  })

  it('keeps dots that others refer to', () => {
    const [first] = /<ellipse[^>]*>/.exec(WIDE) ?? ['']
    const referred = WIDE.replace(first, first.replace('<ellipse', '<ellipse id="one"')).replace(
      '</svg>',
      '<use href="#one" x="-40" y="18" data-part="ignore"/></svg>',
    )
    expectLeft(referred, /change other things/)
  })

  it('is answered as text, whatever its bytes were', () => {
    const latin = `<?xml version="1.0" encoding="iso-8859-1"?>${WIDE.replace(/<\?xml.*?\?>/, '').replace('<path id="panel"', '<title>Café</title><path id="panel"')}`
    const { drawing, report } = corrected(new Uint8Array(Buffer.from(latin, 'latin1')))
    expect(failedRows(report)).toEqual([])
    expect(drawing).toContain('encoding="iso-8859-1"')
    expect(drawing).toContain('<title>Café</title>')
  })

  it('is changed inside the one path that draws all of a sign', () => {
    const bytes = fileOf('hand-everything-one-path')
    const standards = ['au-aba', 'au-ncc-2022']
    const { drawing, changes } = corrected(bytes, standards)
    expect(changes.length).toBeGreaterThan(0)
    expect(drawing.match(/<path/g)).toEqual(decode(bytes).match(/<path/g))
    expect(drawing).not.toContain('<circle')
  })
})

describe('a correction', () => {
  const input: CheckInput = {
    drawing: bytesOf(WIDE),
    standards: ['us-ada-2010'],
    options: { use: 'permanent-room', decisionRule: 'simple', unitSystem: 'printed', language: 'en' },
  }

  it('is undone when the check of the result fails on what passed before', () => {
    const other = '703.3.1/cell-spacing'
    let calls = 0
    const spoiled = (report: Report): Report => ({
      ...report,
      findings: report.findings.map((f) => (f.requirement.endsWith(other) ? { ...f, verdict: 'fail' } : f)),
    })
    const { drawing, changes, notCorrected } = correct(
      input,
      (bytes) => {
        const { sign, report } = examine({ ...input, drawing: bytes }, translator)
        return { sign, report: calls++ === 0 ? report : spoiled(report) }
      },
      translator,
    )
    expect(drawing).toBe(WIDE)
    expect(changes).toEqual([])
    expect(notCorrected[0]?.why).toBe(`Putting it right would break us-ada-2010/${other}, so it was undone.`)
  })

  it('leaves alone what only the description says', () => {
    const sign = { use: 'permanent-room' as const, braille: [{ dotSpacing: 3 }] }
    const again = (drawing: Uint8Array) => examine({ ...input, sign, drawing }, translator)
    const { drawing, notCorrected } = correct({ ...input, sign }, again, translator)
    expect(drawing).toBe(WIDE)
    expect(notCorrected.map(({ requirement }) => requirement)).toContain(`us-ada-2010/${PITCH}`)
  })

  it('changes nothing of a drawing that passes', () => {
    const { drawing, changes, notCorrected, checks } = corrected(fileOf('hand-px96'))
    expect({ drawing, changes, notCorrected, checks }).toEqual({
      drawing: decode(fileOf('hand-px96')),
      changes: [],
      notCorrected: [],
      checks: 1,
    })
  })

  it('done twice changes nothing the second time', () => {
    const once = corrected(bytesOf(WIDE)).drawing
    expect(corrected(bytesOf(once)).drawing).toBe(once)
  })

  it('aims at what all the standards asked allow', () => {
    const { report } = corrected(bytesOf(WIDE), ['us-ada-2010', 'us-ca-2019'])
    expect(failedRows(report).filter((row) => row.includes('703.3.1'))).toEqual([])
    // 11B-703.3.1 (2019) prints 0.100 inch, 2.5 mm, as both least and most; the federal table 0.090 to 0.100 inch.
    expect(report.reading.braille[0]?.dotSpacing).toBeCloseTo(2.5, 1)
  })

  it('needs a drawing', () => {
    const none: CheckInput = { standards: input.standards, options: input.options }
    expect(() => correct(none, () => examine(none, translator), translator)).toThrow(
      expect.objectContaining({ type: 'invalid-description' }),
    )
  })
})
