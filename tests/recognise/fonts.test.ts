import { createRequire } from 'node:module'
import { describe, expect, it } from 'vitest'
import { resolveFace } from '../../src/recognise/fonts.js'
import { matchWeight } from '../../src/recognise/shipped.js'
import { capitalMeasures } from '../../src/recognise/typeface.js'

const require = createRequire(import.meta.url)

const measured = (family: string, weight = 400, style = 'normal') => {
  const face = resolveFace([family], weight, style)
  if (face.kind !== 'outlines') throw new Error(`${family} is not shipped`)
  const measures = capitalMeasures(face.font)
  if (!measures) throw new Error(`${family} has no I or O`)
  return { face, ...measures, em: face.font.unitsPerEm }
}

describe('shipped typefaces', () => {
  // Oracle: sCapHeight of the face's own OS/2 table, and the same figure in @capsizecss/metrics.
  it('have the height of capitals that their own tables and the open metrics give', () => {
    const { face, height, em } = measured('Open Sans')
    const published = require('@capsizecss/metrics/openSans') as { capHeight: number; unitsPerEm: number }
    expect(height).toBe(face.font.capHeight)
    expect(height / em).toBeCloseTo(published.capHeight / published.unitsPerEm, 6)
  })
  // The test drawings' makers measured the I of DejaVu Sans: 19 mm high and 0.1353 of it wide; of DejaVu Serif 0.136.
  it('have the stroke that was measured on drawings of them', () => {
    const sans = measured('DejaVu Sans')
    expect(sans.stem / sans.height).toBeCloseTo(0.1353, 4)
    const serif = measured('DejaVu Serif')
    expect(serif.stem / serif.height).toBeCloseTo(0.136, 3)
  })
  // Boxes of I and O in DejaVu Sans 2.37 as its glyf table has them: I to 1493, O from 115 to 1497 of 2048 units, read from the file.
  it('have the proportion of their O to their I', () => {
    expect(measured('DejaVu Sans').proportion).toBeCloseTo(1382 / 1493, 3)
  })
  it('are found by CSS names and by PostScript names', () => {
    expect(measured('dejavu sans', 700).face.font.postscriptName).toBe('DejaVuSans-Bold')
    expect(measured('DejaVuSans-BoldOblique').face.font.postscriptName).toBe('DejaVuSans-BoldOblique')
    expect(measured('OpenSans-SemiBoldItalic').face.font.postscriptName).toBe('OpenSans-SemiBoldItalic')
    expect(measured('DejaVu Serif', 400, 'italic').face.style).toBe('italic')
    expect(measured('XYZABC+DejaVuSans').face.font.postscriptName).toBe('DejaVuSans')
    expect(measured('DejaVu Sans Bold').face.font.postscriptName).toBe('DejaVuSans-Bold')
    expect(measured('Tinos', 700).face.font.postscriptName).toBe('Tinos-Bold')
  })
})

describe('other typefaces', () => {
  it('give the height of capitals where the open metrics have them', () => {
    // Verdana: sCapHeight 1489 of 2048 units (Microsoft's published metrics, by way of @capsizecss/metrics).
    expect(resolveFace(['Verdana'], 400, 'normal')).toMatchObject({
      kind: 'metrics',
      style: 'sans-serif',
      capHeight: 1489 / 2048,
    })
  })
  // The families that the makers of Arimo, Tinos and Cousine name, and the aliases of fontconfig (30-metric-aliases.conf).
  it.each([
    ['Arial', 'Arial', 'Arimo Regular'],
    ['ArialMT', 'Arial', 'Arimo Regular'],
    ['Arial-BoldItalicMT', 'Arial', 'Arimo Bold Italic'],
    ['ABCDEF+Helvetica-Bold', 'Helvetica', 'Arimo Bold'],
    ['LiberationSans', 'Liberation Sans', 'Arimo Regular'],
    ['Liberation Sans Bold', 'Liberation Sans', 'Arimo Bold'],
    ['TimesNewRomanPSMT', 'Times New Roman', 'Tinos Regular'],
    ['TimesNewRomanPS-BoldMT', 'Times New Roman', 'Tinos Bold'],
    ['Times-Roman', 'Times', 'Tinos Regular'],
    ['CourierNewPS-ItalicMT', 'Courier New', 'Cousine Italic'],
    ['Liberation Mono', 'Liberation Mono', 'Cousine Regular'],
  ])('have the advances of another: %s', (name, family, lender) => {
    expect(resolveFace([name], 400, 'normal')).toMatchObject({ kind: 'substitute', family, lender })
  })
  it('have the height of their own capitals, or of the design that they share', () => {
    const capHeightOf = (name: string) => {
      const face = resolveFace([name], 400, 'normal')
      return face.kind === 'substitute' ? face.capHeight?.share : undefined
    }
    expect(capHeightOf('Arial')).toBeCloseTo(1467 / 2048, 9)
    // Version 2 of the Liberation fonts took over the design of Arimo; the test drawings' makers measured its I at that height.
    expect(capHeightOf('Liberation Sans')).toBeCloseTo(1409 / 2048, 9)
    expect(capHeightOf('Times')).toBeUndefined()
  })
  it('are no lighter or heavier face than they say', () => {
    expect(resolveFace(['Arial'], 600, 'normal')).toMatchObject({ lender: 'Arimo Bold' })
    // The PostScript name of Arial Black, which is another design.
    expect(resolveFace(['Arial-Black'], 400, 'normal').kind).toBe('unknown')
    expect(resolveFace(['Arial Black'], 400, 'normal').kind).not.toBe('substitute')
    expect(resolveFace(['DejaVuSans-Light'], 400, 'normal').kind).toBe('unknown')
  })
  it.each([['Corner Shop Gothic'], ['sans-serif'], ['../../package'], ['__proto__'], ['constructor'], ['']])(
    'are unknown: %s',
    (family) => {
      expect(resolveFace([family, 'DejaVu Sans'], 400, 'normal').kind).toBe('unknown')
    },
  )
})

/** CSS Fonts Level 4, 5.2: wanted weight, weights there are, weight used. */
describe('matching weights', () => {
  it.each([
    [400, [300, 500, 700], 500],
    [500, [300, 400, 700], 400],
    [450, [300, 400, 500], 500],
    [600, [400, 700, 800], 700],
    [600, [300, 400], 400],
    [300, [400, 700], 400],
    [300, [100, 200, 400], 200],
  ])('%d among %j is %d', (wanted, available, used) => {
    expect(matchWeight(wanted, available)).toBe(used)
  })
})
