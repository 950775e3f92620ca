import { describe, expect, it } from 'vitest'
import { apply } from '../../src/geometry/matrix.js'
import { page, read } from './svg.js'

const textsOf = (content: string) => read(page(content)).texts

describe('live text', () => {
  it('gives one run of one style with its start, font and matrix', () => {
    const [run, ...rest] = textsOf(
      `<g transform="translate(1 2) scale(2)"><text id="t" x="3" y="4" font-family="'Open Sans', Arial,sans-serif" font-size="5" font-weight="bold" letter-spacing="0.1em" text-anchor="middle" fill="green">EXIT</text></g>`,
    )
    expect(rest).toEqual([])
    expect(run).toMatchObject({
      text: 'EXIT',
      fontSize: 5,
      fontFamilies: ['Open Sans', 'Arial', 'sans-serif'],
      fontWeight: 700,
      letterSpacing: 0.5,
      textAnchor: 'middle',
      unsupported: [],
      source: { id: 't' },
      positions: [{ x: 3, y: 4 }, undefined, undefined, undefined],
      after: 0,
    })
    const start = apply(run.matrix, { x: 3, y: 4 })
    expect(start.x).toBeCloseTo(7, 9)
    expect(start.y).toBeCloseTo(10, 9)
  })

  it('reads the font shorthand (CSS Fonts 4, 2.7), and single properties over it', () => {
    const font = (style: string) => textsOf(`<text style="${style}">A</text>`)[0]
    expect(font(`font:italic small-caps bold 12pt/1.5 'DejaVu Sans', serif`)).toMatchObject({
      fontStyle: 'italic',
      fontWeight: 700,
      fontSize: 16,
      fontFamilies: ['DejaVu Sans', 'serif'],
    })
    expect(font('font: normal normal 26.063px X')).toMatchObject({
      fontWeight: 400,
      fontSize: 26.063,
      fontFamilies: ['X'],
    })
    expect(font('font: 12px X; font-size: 8px; font-weight: 300')).toMatchObject({ fontWeight: 300, fontSize: 8 })
    expect(font('font: nonsense')).toMatchObject({ fontSize: 16, fontFamilies: [] })
  })

  it('makes one blank of blanks in a row, across elements, and none at the ends (SVG 1.1, 10.15)', () => {
    const runs = textsOf('<text>\n  A \t <tspan> B\n\n</tspan> C  </text>')
    expect(runs.map((r) => r.text)).toEqual(['A ', 'B ', 'C'])
    expect(textsOf('<text xml:space="preserve"> A  B\n</text>')[0].text).toBe(' A  B ')
    expect(textsOf('<text>A<tspan> </tspan>B</text>').map((r) => r.text).join('')).toBe('A B') // prettier-ignore
  })

  it('lets the lists of inner elements win, and hands on what is left (SVG 1.1, 10.5)', () => {
    const runs = textsOf('<text x="1 2 3 4" y="9">A<tspan x="20">BC</tspan>D</text>')
    expect(runs.map((r) => r.positions)).toEqual([[{ x: 1, y: 9 }], [{ x: 20, y: 9 }, { x: 3 }], [{ x: 4, y: 9 }]])
  })

  it('follows the baseline through y and dy, and leaves dx only where x depends on widths', () => {
    const runs = textsOf('<text x="1" y="10" dx="2">AB<tspan dy="3" dx="0.5">C</tspan><tspan y="50">D</tspan></text>')
    expect(runs.map((r) => r.positions)).toEqual([[{ x: 3, y: 10 }, undefined], [{ dx: 0.5, y: 13 }], [{ y: 50 }]])
    expect(runs.map((r) => r.continues)).toEqual([undefined, true, true])
  })

  it('starts at 0, 0 when nothing is said, and counts UTF-16 units', () => {
    expect(textsOf('<text>⠓</text>')[0].positions).toEqual([{ x: 0, y: 0 }])
    expect(textsOf('<text>😀A</text>')[0].positions).toHaveLength(3)
  })

  it('repeats the last turn (SVG 1.1, 10.5)', () => {
    expect(textsOf('<text x="1" rotate="0 10">ABC</text>')[0].positions.map((p) => p?.rotate)).toEqual([
      undefined,
      10,
      10,
    ])
  })

  it('gives word-spacing, and the length that a whole run is fitted into (SVG 2, 11.5)', () => {
    expect(textsOf('<text word-spacing="3">A B</text>')[0]).toMatchObject({ wordSpacing: 3, unsupported: [] })
    expect(textsOf('<text>A</text>')[0]).not.toHaveProperty('wordSpacing')
    expect(textsOf('<text textLength="5mm" lengthAdjust="spacingAndGlyphs">AB</text>')[0]).toMatchObject({
      fitted: { length: expect.closeTo(18.8976, 3) as number, adjust: 'spacingAndGlyphs' },
      unsupported: [],
    })
    const runs = textsOf('<text>A<tspan textLength="40">BC</tspan>D</text>')
    expect(runs.map((r) => r.fitted)).toEqual([undefined, { length: 40, adjust: 'spacing' }, undefined])
  })

  it('names what it does not carry out', () => {
    const unsupported = (attributes: string, inside = 'A') =>
      textsOf(`<text ${attributes}>${inside}</text>`)[0].unsupported
    expect(unsupported('textLength="0"')).toEqual(['textLength'])
    expect(unsupported('textLength="50"', 'A<tspan>B</tspan>')).toEqual(['textLength'])
    expect(unsupported('textLength="50"', '<tspan textLength="20">B</tspan>')).toEqual(['textLength'])
    expect(unsupported('style="font: small-caps 12px X"')).toEqual(['font-variant'])
    expect(unsupported('style="font: condensed 12px X"')).toEqual(['font-stretch'])
    expect(unsupported('writing-mode="tb"')).toEqual(['writing-mode'])
    expect(unsupported('direction="rtl"')).toEqual(['direction'])
    expect(unsupported('dominant-baseline="middle"')).toEqual(['dominant-baseline'])
    expect(unsupported('stroke="red"')).toEqual(['stroke'])
    expect(unsupported('', '<tspan baseline-shift="super">2</tspan>')).toEqual(['baseline-shift'])
    expect(unsupported('dominant-baseline="auto" letter-spacing="normal" stroke="none"')).toEqual([])
  })

  it('lists text along a path, elsewhere or at places that cannot be read as not understood', () => {
    for (const content of [
      '<text><textPath href="#p">A</textPath></text>',
      '<text><tref href="#p"/></text>',
      '<text x="1 b">A</text>',
      '<text x="1e9">A</text>',
    ]) {
      const drawing = read(page(content))
      expect(drawing.texts, content).toEqual([])
      expect(drawing.ignored[0].couldBe, content).toEqual(['braille', 'lettering'])
    }
  })

  it('keeps the order of painting', () => {
    const rect = '<rect width="5" height="5"/>'
    expect(textsOf(`${rect}<text>A</text>${rect}<text>B</text>`).map((t) => t.after)).toEqual([1, 2])
  })

  it('leaves out what is not seen, and warns what follows it', () => {
    expect(
      textsOf(
        '<text display="none">A</text><text visibility="hidden">B</text><text fill="none">C</text><text font-size="0">D</text>',
      ),
    ).toEqual([])
    const runs = textsOf('<text><tspan visibility="hidden">AB</tspan><tspan>C</tspan></text>')
    expect(runs).toMatchObject([{ text: 'C', unsupported: ['text before it that is not seen'] }])
  })

  it('reads titles and descriptions as no part of the text', () => {
    expect(textsOf('<text>A<title>T</title><desc>D</desc>B</text>').map((r) => r.text).join('')).toBe('AB') // prettier-ignore
  })
})
