import { Resvg } from '@resvg/resvg-js'
import { SaxesParser } from 'saxes'
import { describe, expect, it } from 'vitest'
import { coordinate, escaped } from '../../src/report/markup.js'
import { reportSvg } from '../../src/report/svg.js'
import { wrapped } from '../../src/report/svg-legend.js'
import { framesFor, ranges } from '../../src/report/svg-marks.js'
import { numbered } from '../../src/report/numbering.js'
import { declared, missing, type Sign } from '../../src/sign/sign.js'
import { judgement, LINE, observation, sampleReport, sampleSign } from './sample.js'

/** Reads the drawing with an XML parser that checks well-formedness (saxes), and gives its elements. */
function elements(svg: string): { name: string; attributes: Record<string, string> }[] {
  const found: { name: string; attributes: Record<string, string> }[] = []
  const parser = new SaxesParser()
  parser.on('error', (error) => {
    throw error
  })
  parser.on('opentag', ({ name, attributes }) => found.push({ name, attributes: { ...attributes } }))
  parser.write(svg).close()
  return found
}

const drawn = (sign: Sign = sampleSign()) => reportSvg(sampleReport(sign), sign)

const HOSTILE = '</text><script>alert(1)</script>\u0000\u001b\u202e]]>&"\'\ud800'

describe('the annotated drawing', () => {
  it('is well-formed and names itself for those who do not see it', () => {
    const all = elements(drawn())
    const [root] = all
    expect(root?.attributes.role).toBe('img')
    const named = (root?.attributes['aria-labelledby'] ?? '').split(' ')
    const ids = all.map((e) => e.attributes.id).filter((id) => id !== undefined)
    expect(ids).toEqual(named)
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('is at true scale: one unit is one millimetre', () => {
    const root = elements(drawn())[0]?.attributes ?? {}
    const [, , width, height] = (root.viewBox ?? '').split(' ')
    expect(root.width).toBe(`${width}mm`)
    expect(root.height).toBe(`${height}mm`)
    const panel = elements(drawn()).find((e) => e.name === 'rect' && e.attributes.width === '130')
    expect(panel?.attributes.height).toBe('110')
  })

  // What @resvg/resvg-js paints at ten pixels a millimetre, as an outside check that the sheet can be rendered.
  it('is rendered by a renderer that is not ours', () => {
    const root = elements(drawn())[0]?.attributes ?? {}
    const image = new Resvg(drawn(), { fitTo: { mode: 'zoom', value: 2 }, font: { loadSystemFonts: false } }).render()
    expect(image.width / image.height).toBeCloseTo(
      Number.parseFloat(root.width ?? '') / Number.parseFloat(root.height ?? ''),
      1,
    )
    expect(new Set(image.pixels).size).toBeGreaterThan(20)
  })

  it('paints the panel and the characters in their own colours', () => {
    const white = declared({ css: 'white', luminance: 1 })
    const sign = sampleSign()
    const dark = {
      ...sign,
      panel: { ...sign.panel, colour: declared({ css: 'rgb(32 48 60)', luminance: 0.028 }) },
      lettering: sign.lettering.map((item) => ({ ...item, colour: white })),
    }
    const svg = drawn(dark)
    expect(elements(svg).find((e) => e.name === 'rect' && e.attributes.width === '130')?.attributes.fill).toBe(
      '#20303c',
    )
    expect(svg).toMatch(/<(path|text)[^>]* fill="#ffffff"/)
    // Dots have no colour of their own in the model: on a dark panel they are light.
    expect(svg).toContain('fill="#f4f6f8"')
    expect(svg).not.toContain('rgb(')
  })

  it('outlines characters that have the colour of the panel, and takes a reflectance as a grey', () => {
    const grey = declared({ luminance: 0.5 })
    const sign = sampleSign()
    const alike = {
      ...sign,
      panel: { ...sign.panel, colour: grey },
      lettering: sign.lettering.map((item) => ({ ...item, colour: grey })),
    }
    // sRGB (IEC 61966-2-1): a linear 0.5 is written 188, bc in hexadecimal.
    expect(drawn(alike)).toMatch(/fill="#bcbcbc" stroke="#5b6470"/)
  })

  it('marks failures with solid frames and what is undecided with dashed frames and a question mark', () => {
    const svg = drawn()
    const frames = elements(svg).filter(
      (e) => e.name === 'rect' && e.attributes.fill === 'none' && e.attributes.rx !== undefined,
    )
    expect(frames.some((f) => f.attributes['stroke-dasharray'] === undefined)).toBe(true)
    expect(frames.some((f) => f.attributes['stroke-dasharray'] !== undefined)).toBe(true)
    expect(svg).toMatch(/>\? 5</)
    expect(svg).toMatch(/>2</)
  })

  it('has no script, no reference, no style and nothing of a client that is not text', () => {
    const hostile = sampleSign({ mark: HOSTILE })
    hostile.lettering = hostile.lettering.map((l) => ({
      ...l,
      lines: l.lines.map((line) => ({ ...line, text: declared(HOSTILE), outlines: [] })),
    }))
    const svg = reportSvg(
      sampleReport(hostile, [judgement({ decisive: [observation(5.8, { remark: HOSTILE })] })]),
      hostile,
    )
    const names = new Set(elements(svg).map((e) => e.name))
    expect([...names].filter((name) => !['svg', 'title', 'desc', 'rect', 'g', 'path', 'text'].includes(name))).toEqual(
      [],
    )
    for (const { attributes } of elements(svg))
      expect(Object.keys(attributes).filter((a) => /^on|href|style/i.test(a))).toEqual([])
    expect(svg).not.toMatch(/[\p{Bidi_Control}]/u)
  })

  it('writes finite numbers with at most four decimals', () => {
    const odd = sampleSign()
    odd.braille = odd.braille.map((b) => ({
      ...b,
      lines: b.lines.map((line) => ({
        ...line,
        dots: [...line.dots, { x: Number.NaN, y: 1 }, { x: 1e300, y: Infinity }],
      })),
    }))
    odd.lettering = odd.lettering.map((l) => ({
      ...l,
      lines: l.lines.map((line) => ({
        ...line,
        outlines: [
          ...line.outlines,
          [
            { x: 0, y: 0 },
            { x: Infinity, y: 1 },
          ],
        ],
      })),
    }))
    const svg = drawn(odd)
    expect(svg).not.toMatch(/NaN|Infinity|e\+\d|\d\.\d{5}/)
    expect(elements(svg).length).toBeGreaterThan(10)
    expect([
      coordinate(1 / 3),
      coordinate(-0.00001),
      coordinate(Number.NaN),
      coordinate(1e300),
      coordinate(20),
    ]).toEqual(['0.3333', '0', '0', '0', '20'])
  })

  it('says so when nothing has a place', () => {
    const bare = sampleSign({ lettering: [], braille: [], borders: [] })
    bare.panel = { ...bare.panel, place: { element: 'panel' }, width: missing(), height: missing() }
    const svg = reportSvg(sampleReport(bare, []), bare)
    expect(svg).toContain('nothing to draw')
    expect(elements(svg).length).toBeGreaterThan(3)
  })

  it('sets described letters as text at their height', () => {
    const sign = sampleSign()
    sign.lettering = sign.lettering.map((l) => ({ ...l, lines: l.lines.map((line) => ({ ...line, outlines: [] })) }))
    expect(drawn(sign)).toContain('>HILL</text>')
  })

  it('is the same for the same report', () => {
    expect(drawn()).toBe(drawn())
  })
})

describe('the parts of the drawing', () => {
  it('gives equal places one frame', () => {
    const twice = [judgement(), judgement()]
    const { failing, undecided } = numbered(sampleReport(sampleSign(), twice))
    expect(framesFor(failing, undecided)).toEqual([{ box: LINE.box, failing: [1, 2], undecided: [] }])
  })

  it('writes runs of numbers short', () => {
    expect(ranges([9, 1, 3, 4, 5, 7, 8])).toBe('1, 3–5, 7, 8, 9'.replace('7, 8, 9', '7–9'))
    expect(ranges([2, 1])).toBe('1, 2')
  })

  it('wraps text within a line and breaks words that are longer', () => {
    expect(wrapped('one two three', 7)).toEqual(['one two', 'three'])
    expect(wrapped('x'.repeat(9), 4)).toEqual(['xxxx', 'xxxx', 'x'])
    for (const line of wrapped(`a ${'b'.repeat(30)} c`, 10)) expect(line.length).toBeLessThanOrEqual(10)
  })

  it('escapes what XML reserves', () => {
    expect(escaped('a<b>&"\'\n\u0007c')).toBe('a&lt;b&gt;&amp;&quot;&#39; c')
  })
})
