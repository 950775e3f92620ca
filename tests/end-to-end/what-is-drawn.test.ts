import { describe, expect, it } from 'vitest'
import { checked, finding, kiln, PRODUCT, verdictOf } from './kiln.js'

// A drawing is what will be made: what it does not show, or shows off the panel, does not pass because the description has it.
// The rows are those of the 2010 ADA Standards; the contract names the reasons and where things are listed.

const BRAILLE_ROWS = ['703.2/repeated-in-braille', '703.2/wording', '703.3.1/dot-spacing', '703.3.1/cell-spacing']
const SAID = { text: 'kiln room', dotBaseDiameter: 1.55, dotSpacing: 2.4, cellSpacing: 6.9, origin: { x: 20, y: 65 } }

describe('a drawing without braille', () => {
  it.each([
    ['no dots', kiln({ cells: '⠀' })],
    ['dots that are not displayed', kiln({ braille: 'id="braille" display="none"' })],
    ['dots that are wholly transparent', kiln({ braille: 'id="braille" opacity="0"' })],
  ])('with %s fails, whatever the description says of dot heights', (_, drawing) => {
    const report = checked(drawing, PRODUCT)
    expect(verdictOf(report, '703.2/repeated-in-braille')).toBe('fail')
    expect(report.assumptions.some((a) => a.about === 'conflict' && a.text.includes('shows no braille'))).toBe(true)
  })

  it('is undecided where the description says what braille there is', () => {
    const report = checked(kiln({ cells: '⠀' }), { ...PRODUCT, braille: [{ ...PRODUCT.braille[0], ...SAID }] })
    for (const row of BRAILLE_ROWS)
      expect(finding(report, row)).toMatchObject({ verdict: 'undetermined', reason: 'needs-judgement' })
    expect(report.verdict).toBe('undetermined')
  })
})

describe('described values that the drawing contradicts', () => {
  it('are judged, and a caveat says that the verdict rests on them', () => {
    const drawing = kiln({ dot: (x, y) => `<circle cx="${x}" cy="${y}" r="0.9"/>` })
    const report = checked(drawing, { ...PRODUCT, braille: [{ ...PRODUCT.braille[0], dotBaseDiameter: 1.55 }] })
    expect(verdictOf(report, '703.3.1/dot-base-diameter')).toBe('pass')
    expect(report.caveats.join(' ')).toMatch(/may fail/)
    expect(checked(drawing, PRODUCT).caveats.join(' ')).not.toMatch(/may fail/)
    expect(verdictOf(checked(drawing, PRODUCT), '703.3.1/dot-base-diameter')).toBe('fail')
  })
})
